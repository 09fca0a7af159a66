namespace PatternGen;

/// <summary>A pattern whose tree is known.</summary>
internal sealed class DrawnPattern(PatternNode root, string? name) : Pattern
{
    public override string? Name => name;

    private protected override PatternNode Draw() => root;
}
