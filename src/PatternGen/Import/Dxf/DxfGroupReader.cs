using System.Buffers.Text;

namespace PatternGen;

/// <summary>Reads the groups of a DXF file, a code and a value on a line each, one after the other as the stream gives them.</summary>
/// <remarks>
/// It holds one buffer of the file, whatever the size of the file. Lines end with CR LF, LF or CR. A value is a view into
/// the buffer, to be used before the next group is read.
/// </remarks>
internal sealed class DxfGroupReader(Stream stream)
{
    /// <summary>Bytes of the longest line. The format allows 2,049 characters, and pieces of other data in lines of a few hundred.</summary>
    internal const int LongestLine = 64 << 10;

    private const int LowestCode = -5;
    private const int HighestCode = 1071;

    /// <summary>Bytes of the buffer; it grows where a line is longer.</summary>
    private const int UsualBuffer = 32 << 10;

    private byte[] _buffer = new byte[UsualBuffer];
    private int _next;
    private int _end;
    private bool _isAtEnd;
    private bool _mayStartWithFeed;
    private int _value;
    private int _length;

    /// <summary>Number of the line last read, from 1: that of the value.</summary>
    internal int Line { get; private set; }

    /// <summary>The line last read, as errors and notes name it.</summary>
    internal string Where => ImportedCurves.LineName(Line);

    /// <summary>What the value means.</summary>
    internal int Code { get; private set; }

    /// <summary>The value, without spaces before and after.</summary>
    internal ReadOnlySpan<byte> Value => DxfText.Trimmed(_buffer.AsSpan(_value, _length));

    /// <summary>The value as text; spaces count.</summary>
    internal ReadOnlySpan<byte> Text => _buffer.AsSpan(_value, _length);

    /// <summary>Reads the next group; at the end of the file there is none.</summary>
    /// <exception cref="ImportException">A code is none, a code has no value, or a line is too long.</exception>
    internal bool Next()
    {
        do
        {
            if (!ReadLine())
                return false;
            if (Value.IsEmpty)
                return OnlyBlankLinesFollow();
            Code = ParsedCode();
            if (!ReadLine())
                throw Error(
                    $"The file ends after the group code {Code}, without its value: it is cut off."
                );
        } while (Code == DxfCode.Comment);
        return true;
    }

    /// <summary>Reads the next group where one must follow.</summary>
    /// <param name="part">What is being read, for the message.</param>
    /// <exception cref="ImportException">The file ends here, or the next group is none.</exception>
    internal void Require(string part)
    {
        if (!Next())
            throw Error($"The file ends in the middle of {part}: it is cut off.");
    }

    /// <summary>Whether the group is the start of an entity, table, section or of the like, of this name.</summary>
    internal bool IsStartOf(ReadOnlySpan<byte> name) =>
        Code == DxfCode.Start && Value.SequenceEqual(name);

    /// <summary>The value as a number.</summary>
    /// <exception cref="ImportException">It is no finite number.</exception>
    internal double Number() =>
        DxfText.TryNumber(Value, out var number)
            ? number
            : throw Error($"The value \"{Quoted()}\" of group code {Code} is not a finite number.");

    /// <summary>The value as a whole number.</summary>
    /// <exception cref="ImportException">It is none, or too large for one.</exception>
    internal int Whole() =>
        Utf8Parser.TryParse(Value, out int number, out var used) && used == Value.Length
            ? number
            : throw Error($"The value \"{Quoted()}\" of group code {Code} is not a whole number.");

    internal ImportException Error(string problem, params string[] remedies) =>
        new(problem, Where, remedies.Length > 0 ? remedies : ["the file saved anew, as ASCII DXF"]);

    /// <summary>The value, cut short, for messages.</summary>
    internal string Quoted() => DxfText.Shown(Value);

    private int ParsedCode()
    {
        if (Line == 1 && Value.EndsWith("Binary DXF"u8))
            throw Error(
                "This is a binary DXF file, and only ASCII is read.",
                "the file saved anew, as ASCII DXF"
            );
        if (!Utf8Parser.TryParse(Value, out int code, out var used) || used != Value.Length)
            throw Error(
                $"A group code must stand here, a whole number, but it is \"{Quoted()}\": a line is missing or too many."
            );
        return code is >= LowestCode and <= HighestCode
            ? code
            : throw Error(
                $"A group code lies between {LowestCode} and {HighestCode}, but this one is {code}."
            );
    }

    /// <summary>Blank lines are no groups, but some programs end a file with them.</summary>
    private bool OnlyBlankLinesFollow()
    {
        var blank = Line;
        while (ReadLine())
            if (!Value.IsEmpty)
                throw new ImportException(
                    "A group code must stand here, but the line is blank.",
                    ImportedCurves.LineName(blank),
                    ["the file saved anew, as ASCII DXF"]
                );
        return false;
    }

    private bool ReadLine()
    {
        if (Line == 0)
            SkipMark();
        if (_mayStartWithFeed && (_next < _end || Fill(0)) && _buffer[_next] == '\n')
            _next++;
        _mayStartWithFeed = false;
        var known = 0;
        while (true)
        {
            var found = _buffer
                .AsSpan(_next + known, _end - _next - known)
                .IndexOfAny((byte)'\n', (byte)'\r');
            if (found >= 0)
            {
                Take(known + found);
                _mayStartWithFeed = _buffer[_next] == '\r';
                _next++;
                return true;
            }
            known = _end - _next;
            if (known > LongestLine)
            {
                Line++;
                throw Error(
                    $"A line has more than {LongestLine} bytes: this is no ASCII DXF file."
                );
            }
            if (Fill(known))
                continue;
            if (known == 0)
                return false;
            Take(known);
            return true;
        }
    }

    /// <summary>The mark of UTF-8, with which some programs begin a text.</summary>
    private void SkipMark()
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        while (_end - _next < mark.Length && Fill(_end - _next)) { }
        if (_buffer.AsSpan(_next, _end - _next).StartsWith(mark))
            _next += mark.Length;
    }

    private void Take(int length)
    {
        Line++;
        (_value, _length) = (_next, length);
        _next += length;
    }

    /// <summary>Reads on behind the bytes that are kept; false at the end of the stream.</summary>
    private bool Fill(int kept)
    {
        if (_isAtEnd)
            return false;
        if (_next > 0)
        {
            _buffer.AsSpan(_next, kept).CopyTo(_buffer);
            (_next, _end) = (0, kept);
        }
        if (kept == _buffer.Length)
            Array.Resize(ref _buffer, 2 * _buffer.Length);
        var read = stream.Read(_buffer, _end, _buffer.Length - _end);
        _end += read;
        _isAtEnd = read == 0;
        return !_isAtEnd;
    }
}
