namespace PatternGen;

/// <summary>What hides elements: inline styles, and style sheets as far as they name a class, a name or a kind of element.</summary>
internal sealed class SvgHiding
{
    private readonly Dictionary<string, (string? Display, string? Visibility)> _rules = [];

    /// <summary>Whether a rule that could hide something was too clever.</summary>
    internal bool HasMissed { get; private set; }

    /// <summary>Reads a style sheet. Nothing that it imports is opened.</summary>
    internal void Add(ReadOnlySpan<char> css)
    {
        while (css.IndexOf('{') is var open and >= 0)
        {
            var selectors = css[..open].Trim();
            var length = BlockLength(css[open..]);
            var said = Said(css.Slice(open + 1, Math.Max(0, length - 2)));
            css = css[(open + length)..];
            if (said == default)
                continue;
            foreach (var selector in selectors.ToString().Split(','))
                Add(selector.AsSpan().Trim(), said);
        }
    }

    /// <summary>Returns what holds for an element: its inline style before style sheets, these before its attributes.</summary>
    internal (string? Display, string? Visibility) Of(
        string kind,
        string? name,
        string? classes,
        string? style,
        (string? Display, string? Visibility) attributes
    )
    {
        var said = Over(attributes, Rule(kind));
        if (classes is not null && _rules.Count > 0)
            foreach (var word in classes.Split(' '))
                said = Over(said, Rule("." + word));
        if (name is not null)
            said = Over(said, Rule("#" + name));
        return Over(said, Said(style));
    }

    private (string?, string?) Rule(string selector) =>
        _rules.Count > 0 ? _rules.GetValueOrDefault(selector) : default;

    private static (string? Display, string? Visibility) Over(
        (string? Display, string? Visibility) below,
        (string? Display, string? Visibility) above
    ) => (above.Display ?? below.Display, above.Visibility ?? below.Visibility);

    private void Add(ReadOnlySpan<char> selector, (string?, string?) said)
    {
        if (selector.IsEmpty || selector.IndexOfAny(" >+~:[*@\n\t") >= 0)
            HasMissed = true;
        else
            _rules[selector.ToString()] = Over(Rule(selector.ToString()), said);
    }

    /// <summary>Length of a block from its opening brace to its closing one, with the blocks in it.</summary>
    private static int BlockLength(ReadOnlySpan<char> block)
    {
        var depth = 0;
        for (var i = 0; i < block.Length; i++)
        {
            depth +=
                block[i] == '{' ? 1
                : block[i] == '}' ? -1
                : 0;
            if (depth == 0)
                return i + 1;
        }
        return block.Length;
    }

    private static (string? Display, string? Visibility) Said(ReadOnlySpan<char> declarations)
    {
        (string? Display, string? Visibility) said = default;
        while (!declarations.IsEmpty)
        {
            var end = declarations.IndexOf(';');
            var declaration = end < 0 ? declarations : declarations[..end];
            declarations = end < 0 ? default : declarations[(end + 1)..];
            var colon = declaration.IndexOf(':');
            if (colon < 0)
                continue;
            var property = declaration[..colon].Trim();
            var value = declaration[(colon + 1)..].Trim();
            if (value.IndexOf('!') is var important and >= 0)
                value = value[..important].Trim();
            if (property.Equals("display", StringComparison.OrdinalIgnoreCase))
                said.Display = value.ToString();
            else if (property.Equals("visibility", StringComparison.OrdinalIgnoreCase))
                said.Visibility = value.ToString();
        }
        return said;
    }
}
