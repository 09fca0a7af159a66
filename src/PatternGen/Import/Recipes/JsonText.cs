using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PatternGen;

/// <summary>A JSON value that is to be written for people: what is short stands on one line, corners fill lines.</summary>
internal sealed class JsonText
{
    /// <summary>Columns of a line: two recipes fit side by side on a screen.</summary>
    private const int Columns = 100;

    private readonly string? _scalar;
    private readonly string[]? _names;
    private readonly JsonText[]? _items;

    private JsonText(string scalar) => (_scalar, Length) = (scalar, scalar.Length);

    private JsonText(string[]? names, JsonText[] items)
    {
        (_names, _items) = (names, items);
        // Brackets, and ", " between; in an object ": " after each name, and a space inside either brace.
        var between = 2L * Math.Max(0, items.Length - 1);
        Length = 2 + between + items.Sum(item => item.Length);
        if (names is not null && names.Length > 0)
            Length += 2 + names.Sum(name => name.Length + 2L);
        HasObjects = names is not null || items.Any(item => item.HasObjects);
    }

    /// <summary>Number of characters on one line.</summary>
    private long Length { get; }

    private bool HasObjects { get; }

    internal bool IsEmptyObject => _names is { Length: 0 };

    internal static JsonText Of(bool value) => new(value ? "true" : "false");

    internal static JsonText Of(int value) => new(value.ToString(CultureInfo.InvariantCulture));

    /// <summary>The shortest text that is read as the same number.</summary>
    internal static JsonText Of(double value) =>
        new(value.ToString("R", CultureInfo.InvariantCulture));

    internal static JsonText Of(string value) => new(Quoted(value));

    internal static JsonText List(IEnumerable<JsonText> items) => new(null, [.. items]);

    internal static JsonText List(params JsonText[] items) => new(null, items);

    internal static JsonText Object(IReadOnlyCollection<(string Name, JsonText Value)> members) =>
        new(
            [.. members.Select(member => Quoted(member.Name))],
            [.. members.Select(member => member.Value)]
        );

    internal static JsonText Object(params (string Name, JsonText Value)[] members) =>
        Object((IReadOnlyCollection<(string, JsonText)>)members);

    /// <summary>Returns an object with a further member before the others, in place of one of that name.</summary>
    internal JsonText WithFirst(string name, JsonText value)
    {
        var quoted = Quoted(name);
        var members = _names!.Zip(_items!).Where(member => member.First != quoted).ToArray();
        return new(
            [quoted, .. members.Select(member => member.First)],
            [value, .. members.Select(member => member.Second)]
        );
    }

    /// <summary>Writes the value and ends the line.</summary>
    internal void WriteTo(TextWriter output)
    {
        Write(output, "", 0);
        output.Write('\n');
    }

    public override string ToString()
    {
        var text = new StringWriter(CultureInfo.InvariantCulture);
        WriteTo(text);
        return text.ToString();
    }

    /// <summary>Letters beyond ASCII stay as they are. Half a pair of surrogates, which no file can hold, becomes the mark for that.</summary>
    private static string Quoted(string text) =>
        $"\"{JsonEncodedText.Encode(Encoding.UTF8.GetBytes(text), JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";

    /// <param name="output">Where to.</param>
    /// <param name="indent">What stands before each further line.</param>
    /// <param name="used">Characters that the line holds already, or that must follow.</param>
    private void Write(TextWriter output, string indent, int used)
    {
        if (_items is null)
            output.Write(_scalar);
        else if (indent.Length + used + Length <= Columns)
            WriteInline(output);
        else if (HasObjects)
            WriteOnePerLine(output, indent);
        else
            WriteFilled(output, indent);
    }

    private void WriteInline(TextWriter output)
    {
        if (_items is null)
        {
            output.Write(_scalar);
            return;
        }
        var pad = _names is { Length: > 0 } ? " " : "";
        output.Write(_names is null ? "[" : "{" + pad);
        for (var i = 0; i < _items.Length; i++)
        {
            if (i > 0)
                output.Write(", ");
            if (_names is not null)
                output.Write(_names[i] + ": ");
            _items[i].WriteInline(output);
        }
        output.Write(_names is null ? "]" : pad + "}");
    }

    private void WriteOnePerLine(TextWriter output, string indent)
    {
        var inner = indent + "  ";
        output.Write(_names is null ? "[\n" : "{\n");
        for (var i = 0; i < _items!.Length; i++)
        {
            output.Write(inner);
            if (_names is not null)
                output.Write(_names[i] + ": ");
            _items[i].Write(output, inner, 1 + (_names is null ? 0 : _names[i].Length + 2));
            output.Write(i + 1 < _items.Length ? ",\n" : "\n");
        }
        output.Write(indent);
        output.Write(_names is null ? "]" : "}");
    }

    /// <summary>Numbers and corners, as many on a line as fit.</summary>
    private void WriteFilled(TextWriter output, string indent)
    {
        var inner = indent + "  ";
        output.Write("[\n" + inner);
        long column = inner.Length;
        for (var i = 0; i < _items!.Length; i++)
        {
            if (i > 0 && column + _items[i].Length + 2 > Columns)
            {
                output.Write(",\n" + inner);
                column = inner.Length;
            }
            else if (i > 0)
            {
                output.Write(", ");
                column += 2;
            }
            _items[i].Write(output, inner, 1);
            column += _items[i].Length;
        }
        output.Write("\n" + indent + "]");
    }
}
