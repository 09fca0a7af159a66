namespace PatternGen;

/// <summary>Which layers are shown; upper and lower case are alike.</summary>
internal sealed class DxfLayerTable
{
    /// <summary>The layer on which what a block draws lies on the layer of the block.</summary>
    internal const string Zero = "0";

    private const int FrozenFlag = 1;

    private readonly HashSet<string> _off = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _frozen = new(StringComparer.OrdinalIgnoreCase);
    private readonly LayersAsked _asked;

    internal DxfLayerTable(ImportSettings settings)
    {
        _asked = new(settings.Layers);
        // Every drawing has this one, whether or not the table or an entity names it.
        _asked.Meet(Zero, isLayer: false);
    }

    /// <summary>Takes in an entry of the table.</summary>
    /// <param name="name">The layer.</param>
    /// <param name="flags">Group 70.</param>
    /// <param name="colour">Group 62, negative for a layer that is switched off.</param>
    internal void Add(string name, int flags, int colour)
    {
        _asked.Meet(name);
        if ((flags & FrozenFlag) != 0)
            _frozen.Add(name);
        if (colour < 0)
            _off.Add(name);
    }

    /// <summary>Why something on a layer is not drawn; null if it is.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="isBlock">
    /// Whether it is a block: its parts lie on layers of their own, which a layer that is only off, or not asked for, does not
    /// hide with it.
    /// </param>
    internal string? Hides(string layer, bool isBlock)
    {
        var isAskedFor = _asked.Meet(layer);
        if (_frozen.Contains(layer))
            return $"what lies on layer \"{layer}\", which is frozen";
        if (isBlock)
            return null;
        if (_off.Contains(layer))
            return $"what lies on layer \"{layer}\", which is off";
        return isAskedFor ? null : $"what lies on layer \"{layer}\", which is not asked for";
    }

    /// <exception cref="ImportException">A layer that was asked for is not in the file.</exception>
    internal void ThrowIfMissed() => _asked.ThrowIfMissed();
}
