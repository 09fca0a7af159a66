namespace PatternGen;

/// <summary>What a style says of the place and the sight of an element.</summary>
/// <param name="Display">The value of display; null if it says nothing.</param>
/// <param name="Visibility">The value of visibility; null if it says nothing.</param>
/// <param name="Unread">A property that would move or shape the element, and is only read as an attribute.</param>
/// <param name="IsClipped">Whether it clips or masks.</param>
internal readonly record struct SvgDeclared(
    string? Display,
    string? Visibility,
    string? Unread = null,
    bool IsClipped = false
)
{
    /// <summary>Reads declarations, those between the braces of a rule.</summary>
    internal static SvgDeclared Of(ReadOnlySpan<char> declarations)
    {
        var said = default(SvgDeclared);
        while (!declarations.IsEmpty)
        {
            var end = declarations.IndexOf(';');
            var declaration = end < 0 ? declarations : declarations[..end];
            declarations = end < 0 ? default : declarations[(end + 1)..];
            var colon = declaration.IndexOf(':');
            if (colon < 0)
                continue;
            var value = declaration[(colon + 1)..].Trim();
            if (value.IndexOf('!') is var important and >= 0)
                value = value[..important].Trim();
            said = said.With(declaration[..colon].Trim(), value);
        }
        return said;
    }

    /// <summary>This style over another one, which holds where this one says nothing.</summary>
    internal SvgDeclared Over(SvgDeclared below) =>
        new(
            Display ?? below.Display,
            Visibility ?? below.Visibility,
            Unread ?? below.Unread,
            IsClipped || below.IsClipped
        );

    private SvgDeclared With(ReadOnlySpan<char> property, ReadOnlySpan<char> value)
    {
        // These names need no other case: it is programs that write them.
        switch (property)
        {
            case "display":
                return this with { Display = value.ToString() };
            case "visibility":
                return this with { Visibility = value.ToString() };
        }
        // Values that leave all as it is without the property.
        if (value is "none" or "auto" or "100%" or "initial" or "unset")
            return this;
        return property switch
        {
            "clip-path" or "mask" => this with { IsClipped = true },
            "transform"
            or "translate"
            or "rotate"
            or "scale"
            or "d"
            or "x"
            or "y"
            or "cx"
            or "cy"
            or "r"
            or "rx"
            or "ry"
            or "width"
            or "height" => this with
            {
                Unread = property.ToString(),
            },
            _ => this,
        };
    }
}
