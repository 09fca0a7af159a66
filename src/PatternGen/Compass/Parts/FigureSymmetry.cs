using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The turns and mirrors that bring a figure onto itself, found from its lines.</summary>
/// <remarks>
/// A figure with symmetry of order n comes onto itself by n turns, no turn included, and if it has mirrors, by n of those.
/// It counts as symmetric if its lines come to lie within about 1e-4 of its extent (0.008 mm on 80 mm) of each other, far
/// less than a pencil line is wide. Immutable and safe to share between threads.
/// </remarks>
public sealed class FigureSymmetry
{
    internal FigureSymmetry(Point centre, int order, Angle? firstMirror, bool isRound)
    {
        Centre = centre;
        Order = order;
        FirstMirror = firstMirror;
        IsRound = isRound;
    }

    /// <summary>The point that every turn and mirror leaves where it is: the centre of gravity of the lines.</summary>
    public Point Centre { get; }

    /// <summary>
    /// Number of equal steps of a whole turn that each bring the figure onto itself: 6 for a rosette of six petals, 1 for a
    /// figure that only a whole turn does, and 1 also where <see cref="IsRound"/>.
    /// </summary>
    public int Order { get; }

    /// <summary>Whether the figure is its own mirror image in lines through the centre; then there are as many as <see cref="Order"/>.</summary>
    public bool HasMirrors => FirstMirror is not null;

    /// <summary>
    /// Direction of the mirror line next to level, counter-clockwise, from 0 and under 180 degrees / <see cref="Order"/>; the
    /// others follow in steps of that size. Null without mirrors.
    /// </summary>
    public Angle? FirstMirror { get; }

    /// <summary>
    /// Whether the figure is nothing but circles round one centre, which every turn and mirror brings onto itself. None of
    /// them takes a part to another one, so parts are treated as with order 1.
    /// </summary>
    public bool IsRound { get; }

    /// <summary>Returns the kind in the usual short form: <c>D6</c> for order 6 with mirrors, <c>C6</c> without, <c>round</c> for circles round one centre.</summary>
    public override string ToString() =>
        IsRound
            ? "round"
            : string.Create(CultureInfo.InvariantCulture, $"{(HasMirrors ? 'D' : 'C')}{Order}");
}
