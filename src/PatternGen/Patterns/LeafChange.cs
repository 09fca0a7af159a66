namespace PatternGen;

/// <summary>Makes a copy of a tree with other leaves. What the tree shares, the copy shares.</summary>
internal sealed class LeafChange(Func<MotifNode, MotifNode> change)
{
    private readonly Dictionary<PatternNode, PatternNode> _done = new(
        ReferenceEqualityComparer.Instance
    );

    internal PatternNode Of(PatternNode node)
    {
        if (!_done.TryGetValue(node, out var changed))
            _done[node] = changed = node is MotifNode leaf ? change(leaf) : node.Changed(this);
        return changed;
    }
}
