namespace PatternGen;

public partial class Wording
{
    /// <summary>What a leaf is called: <c>Leaf 14 × 5 mm</c>.</summary>
    public virtual string Leaf(double length, double width) => $"Leaf {Size(length, width)}";

    /// <summary>What a stroke is called: <c>Stroke 40 × 4 mm</c>.</summary>
    public virtual string Stroke(double length, double width) => $"Stroke {Size(length, width)}";

    /// <summary>What a heart is called: <c>Heart 20 × 18 mm</c>.</summary>
    public virtual string Heart(double width, double height) => $"Heart {Size(width, height)}";

    /// <summary>What a flower is called: <c>Flower of 6 petals, radius 20 mm</c>.</summary>
    public virtual string Flower(int petals, double radius) =>
        $"Flower of {petals} petals, radius {Millimetres(radius)}";

    /// <summary>What a scroll is called: <c>Scroll of 1.5 turns, radius 20 mm</c>.</summary>
    public virtual string Scroll(double radius, double turns) =>
        $"Scroll of {Number(turns, 2)} turns, radius {Millimetres(radius)}";

    /// <summary>What a stem is called: <c>Stem of 120 mm with 9 leaves</c>.</summary>
    /// <param name="length">Length along the stem in mm.</param>
    /// <param name="leaves">Number of leaves.</param>
    public virtual string Stem(double length, int leaves) =>
        $"Stem of {Millimetres(length)} with {(leaves == 1 ? "1 leaf" : $"{leaves} leaves")}";
}
