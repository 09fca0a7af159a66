namespace PatternGen;

/// <summary>A pattern whose tree is known.</summary>
/// <param name="root">The tree.</param>
/// <param name="name">What the piece is called.</param>
/// <param name="facts">What was said of the patterns that it is made of.</param>
/// <param name="origin">What it was made of; null if the tree is all there is.</param>
internal sealed class DrawnPattern(
    PatternNode root,
    string? name,
    Func<Wording, IEnumerable<string>> facts,
    PatternOrigin? origin = null
) : Pattern
{
    /// <summary>What it was made of; null if the tree is all there is.</summary>
    internal PatternOrigin? Origin => origin;

    public override string? Name => name;

    internal override IEnumerable<string> Facts(Wording words) => facts(words);

    private protected override PatternNode Draw() => root;
}
