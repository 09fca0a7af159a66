namespace PatternGen;

/// <summary>Refuses tags that are absurdly long before the reader of XML takes them in: it holds a tag as a whole, and compares its attributes each with each.</summary>
/// <remarks>
/// It looks at bytes, not at characters, and at nothing but angle brackets and quotes, which are the same bytes in all encodings
/// that matter. Since an angle bracket that opens can't stand in a value, what confuses it, such as an apostrophe in a comment,
/// does so up to the next tag only.
/// </remarks>
internal sealed class SvgTagStream(Stream stream) : ForwardStream
{
    /// <summary>Bytes in a tag. The longest by far are those of pictures that are written into the file.</summary>
    private const int MostBytes = 64 << 20;

    /// <summary>Quoted values in a tag; SVG knows fewer than 300 attributes.</summary>
    private const int MostValues = 1000;

    private const byte None = 0;

    private bool _isInTag;
    private byte _quote;
    private int _bytes;
    private int _values;

    /// <exception cref="ImportException">A tag is too long.</exception>
    public override int Read(byte[] buffer, int offset, int count)
    {
        var read = stream.Read(buffer, offset, count);
        for (var rest = buffer.AsSpan(offset, read); !rest.IsEmpty; )
            rest = rest[Follow(rest)..];
        return read;
    }

    /// <summary>Goes on to behind the next byte that matters. Returns how many bytes that is.</summary>
    private int Follow(ReadOnlySpan<byte> bytes)
    {
        var found =
            _quote != None ? bytes.IndexOfAny((byte)'<', _quote)
            : _isInTag ? bytes.IndexOfAny("<>\"'"u8)
            : bytes.IndexOf((byte)'<');
        var passed = found < 0 ? bytes.Length : found + 1;
        if (_isInTag && (_bytes += passed) > MostBytes)
            throw TooLong($"A tag has more than {MostBytes} bytes.", "a path cut into several");
        if (found >= 0)
            Take(bytes[found]);
        return passed;
    }

    private void Take(byte mark)
    {
        if (mark == '<')
            (_isInTag, _quote, _bytes, _values) = (true, None, 0, 0);
        else if (mark == '>')
            _isInTag = false;
        else if (_quote != None)
            _quote = None;
        else if (++_values > MostValues)
            throw TooLong(
                $"A tag has more than {MostValues} attributes.",
                "a file whose elements have only attributes of SVG"
            );
        else
            _quote = mark;
    }

    private static ImportException TooLong(string problem, string remedy) =>
        new(problem, null, [remedy, "the file written anew as plain SVG"]);
}
