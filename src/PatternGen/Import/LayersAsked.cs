namespace PatternGen;

/// <summary>The layers that a caller asked for, and those that a file turns out to have; upper and lower case are alike.</summary>
internal sealed class LayersAsked(IReadOnlyList<string>? asked)
{
    /// <summary>Most names that an error lists: about as many as one reads.</summary>
    private const int MostListed = 20;

    private readonly HashSet<string> _asked = new(asked ?? [], StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _missing = new(asked ?? [], StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _known = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<string> _listed = [];

    /// <summary>Whether no layer was named: all are read.</summary>
    internal bool IsEverything => asked is null;

    /// <summary>Takes in a name that the file has. Returns whether what bears it is to be read.</summary>
    /// <param name="name">The name.</param>
    /// <param name="isLayer">Whether it is that of a layer, to be listed as one.</param>
    internal bool Meet(string name, bool isLayer = true)
    {
        if (IsEverything)
            return true;
        _missing.Remove(name);
        // One more than is listed tells that there are more.
        if (isLayer && _listed.Count <= MostListed && _known.Add(name))
            _listed.Add(name);
        return _asked.Contains(name);
    }

    /// <exception cref="ImportException">A layer that was asked for was not met.</exception>
    internal void ThrowIfMissed()
    {
        if (_missing.Count > 0)
            throw new ImportException(
                $"The file has no layer named {string.Join(" or ", _missing.Order(StringComparer.Ordinal))}.",
                null,
                _listed.Count > 0
                    ? [$"one of its layers: {Listed()}"]
                    : ["all layers: none of them has a name"]
            );
    }

    private string Listed() =>
        string.Join(", ", _listed.Take(MostListed)) + (_listed.Count > MostListed ? ", …" : "");
}
