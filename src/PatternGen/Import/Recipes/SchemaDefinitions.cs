namespace PatternGen;

/// <summary>The definitions of a schema that is being written, each once.</summary>
internal sealed class SchemaDefinitions
{
    private readonly SortedDictionary<string, JsonText?> _definitions = new(StringComparer.Ordinal);

    internal IReadOnlyList<(string, JsonText)> All =>
        [.. _definitions.Select(definition => (definition.Key, definition.Value!))];

    /// <summary>Returns a reference to a definition, which is written when it is first referred to.</summary>
    internal JsonText Define(string name, Func<JsonText> write)
    {
        // Claimed before it is written, because patterns hold patterns.
        if (_definitions.TryAdd(name, null))
            _definitions[name] = write();
        return SchemaText.Reference(name);
    }
}
