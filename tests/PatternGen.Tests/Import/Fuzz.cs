using System.Globalization;
using CsCheck;

namespace PatternGen.Tests.Importing;

/// <summary>How many damaged files are tried: few in each run of the tests, as many as asked in the nightly one.</summary>
internal static class Fuzz
{
    /// <summary>Cases for one kind of file. Together with those of the other kinds about 5,000.</summary>
    private const int Few = 1700;

    /// <summary>From the environment variable PATTERNGEN_FUZZ, such as 100000.</summary>
    internal static int Cases { get; } =
        int.TryParse(
            Environment.GetEnvironmentVariable("PATTERNGEN_FUZZ"),
            CultureInfo.InvariantCulture,
            out var cases
        )
            ? cases
            : Few;

    /// <summary>Good files with a few bytes changed, left out, doubled, or replaced by words that may do harm.</summary>
    internal static Gen<byte[]> Damaged(byte[][] files, string[] words)
    {
        byte[][] harmful = [.. words.Select(System.Text.Encoding.UTF8.GetBytes)];
        var change = Gen.Select(Gen.Int[0, 6], Gen.Int, Gen.Int, Gen.Byte);
        return Gen.Select(Gen.Int[0, files.Length - 1], change.Array[1, 3])
            .Select(
                (file, changes) =>
                {
                    var bytes = new List<byte>(files[file]);
                    foreach (var (kind, first, second, value) in changes)
                        Change(bytes, harmful, kind, (uint)first, (uint)second, value);
                    return bytes.ToArray();
                }
            );
    }

    private static void Change(
        List<byte> bytes,
        byte[][] words,
        int kind,
        uint first,
        uint second,
        byte value
    )
    {
        if (bytes.Count == 0)
            return;
        var at = (int)(first % (uint)bytes.Count);
        var length = (int)Math.Min(second % 200, bytes.Count - at);
        switch (kind)
        {
            case 0:
                bytes[at] = value;
                break;
            case 1:
                bytes.Insert(at, value);
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            case 4:
                bytes.InsertRange((int)(second % (uint)bytes.Count), bytes.GetRange(at, length));
                break;
            default:
                Replace(bytes, at, words[second % (uint)words.Length]);
                break;
        }
    }

    /// <summary>Puts a word in the place of the one that a position lies in.</summary>
    private static void Replace(List<byte> bytes, int at, byte[] word)
    {
        var (start, end) = (at, at);
        while (start > 0 && !IsGap(bytes[start - 1]))
            start--;
        while (end < bytes.Count && !IsGap(bytes[end]))
            end++;
        bytes.RemoveRange(start, end - start);
        bytes.InsertRange(start, word);
    }

    private static bool IsGap(byte letter) =>
        letter is (byte)'\n' or (byte)'\r' or (byte)' ' or (byte)'"' or (byte)',' or (byte)':';
}
