namespace PatternGen;

public partial class CompassDrawing
{
    /// <summary>Returns every design that carves some of the parts and leaves the others.</summary>
    /// <param name="keep">
    /// How much of the figure's symmetry each design keeps; all of it by default. A circle and six equal ones round points of
    /// it, each through the centre, have 4 orbits and so 2^4 - 1 = 15 designs.
    /// </param>
    /// <exception cref="PatternException">The figure does not have the turns to be kept, or there are more than 128 orbits to choose from; the message gives what would work.</exception>
    public DesignSet AllDesigns(Symmetry keep = default) => new(new DesignBoard(Figure, keep));
}
