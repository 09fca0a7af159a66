using System.Text;

namespace PatternGen;

/// <summary>Style sheets and inline styles, as far as they name a class, a name or a kind of element.</summary>
internal sealed class SvgStyles
{
    private readonly Dictionary<string, SvgDeclared> _rules = [];

    /// <summary>Whether a rule that matters was too clever, or came after what it could be about.</summary>
    internal bool HasMissed { get; private set; }

    /// <summary>Reads a style sheet. Nothing that it imports is opened.</summary>
    /// <param name="sheet">Its text.</param>
    /// <param name="isLate">Whether elements have been read before it.</param>
    internal void Add(string sheet, bool isLate)
    {
        var css = WithoutComments(sheet).AsSpan();
        while (css.IndexOf('{') is var open and >= 0)
        {
            var selectors = css[..open].Trim();
            var length = BlockLength(css[open..]);
            var said = SvgDeclared.Of(css.Slice(open + 1, Math.Max(0, length - 2)));
            css = css[(open + length)..];
            if (said == default)
                continue;
            HasMissed |= isLate;
            foreach (var selector in selectors.ToString().Split(','))
                Add(selector.AsSpan().Trim(), said);
        }
    }

    /// <summary>Returns what holds for an element: its inline style before style sheets, these before its attributes.</summary>
    internal SvgDeclared Of(
        string kind,
        string? name,
        string? classes,
        string? style,
        SvgDeclared attributes
    )
    {
        var said = Rule(kind).Over(attributes);
        if (classes is not null && _rules.Count > 0)
            foreach (var word in classes.Split(' '))
                said = Rule("." + word).Over(said);
        if (name is not null)
            said = Rule("#" + name).Over(said);
        return SvgDeclared.Of(style).Over(said);
    }

    private SvgDeclared Rule(string selector) =>
        _rules.Count > 0 ? _rules.GetValueOrDefault(selector) : default;

    private void Add(ReadOnlySpan<char> selector, SvgDeclared said)
    {
        if (selector.IsEmpty || selector.IndexOfAny(" >+~:[*@\n\t") >= 0)
            HasMissed = true;
        else
            _rules[selector.ToString()] = said.Over(Rule(selector.ToString()));
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

    private static string WithoutComments(ReadOnlySpan<char> css)
    {
        var text = new StringBuilder();
        while (css.IndexOf("/*") is var start and >= 0)
        {
            text.Append(css[..start]).Append(' ');
            css = css[(start + 2)..];
            var end = css.IndexOf("*/");
            css = end < 0 ? default : css[(end + 2)..];
        }
        return text.Append(css).ToString();
    }
}
