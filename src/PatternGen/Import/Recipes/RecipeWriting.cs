using System.Globalization;

namespace PatternGen;

/// <summary>A recipe while it is written: which patterns are used more than once, and so are described once, by name.</summary>
/// <remarks>
/// So a recipe is as small as the pattern is in memory, and what the pattern shares the rebuilt one shares too. Deep nests
/// are taken apart in the same way. A pattern is written twice: the first time only counts what it uses.
/// </remarks>
internal sealed class RecipeWriting
{
    /// <summary>Levels of nested patterns after which one is described apart: well within what a reader allows, and readable.</summary>
    private const int Levels = 12;

    private static readonly JsonText Nothing = JsonText.Of(false);

    private readonly Dictionary<Pattern, int> _uses = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Pattern, string> _names = new(ReferenceEqualityComparer.Instance);
    private readonly List<(string Name, JsonText Pattern)> _shared = [];
    private bool _counts = true;
    private int _height;

    /// <summary>The patterns with names, each after those that it uses.</summary>
    internal IReadOnlyList<(string Name, JsonText Pattern)> Shared => _shared;

    /// <summary>Returns the members of the outermost pattern.</summary>
    internal List<(string, JsonText)> Outermost(Pattern pattern)
    {
        PatternType.Instance.Members(pattern, this);
        _counts = false;
        return PatternType.Instance.Members(pattern, this);
    }

    /// <summary>The name under which a pattern is described; null if it is described where it is used.</summary>
    internal string? NameOf(Pattern pattern) => _names.GetValueOrDefault(pattern);

    /// <summary>Writes a pattern where it is used, or its name there.</summary>
    internal JsonText Use(Pattern pattern, Func<JsonText> write)
    {
        if (_counts)
        {
            if (Counted(pattern) == 1)
                write();
            return Nothing;
        }
        if (NameOf(pattern) is { } known)
            return Reference(known);
        var before = _height;
        _height = 0;
        var text = write();
        var isApart = _uses[pattern] > 1 || _height >= Levels;
        _height = Math.Max(before, isApart ? 0 : _height + 1);
        return isApart ? Reference(Share(pattern, text)) : text;
    }

    /// <summary>Whether a pattern that another was made of is described apart; it is then, if it was not yet.</summary>
    internal bool IsDescribedApart(Pattern pattern)
    {
        if (_counts)
            return Counted(pattern) > 1;
        if (_uses[pattern] > 1)
            PatternType.Instance.Write(pattern, this);
        return NameOf(pattern) is not null;
    }

    private int Counted(Pattern pattern) => _uses[pattern] = _uses.GetValueOrDefault(pattern) + 1;

    private string Share(Pattern pattern, JsonText text)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"part {_shared.Count + 1}");
        _names[pattern] = name;
        _shared.Add((name, text));
        return name;
    }

    private static JsonText Reference(string name) =>
        JsonText.Object(
            (PatternType.Key, JsonText.Of(SharedKind.Key)),
            (SharedKind.Name.Name, JsonText.Of(name))
        );
}
