using System.Text.Json;
using System.Text.Unicode;

namespace PatternGen;

/// <summary>Reads the bytes of a recipe, within limits.</summary>
internal static class RecipeFile
{
    /// <summary>
    /// Levels of brackets that a level of nested patterns may have: its object, a list, an object in it with the pattern;
    /// and those of a chip's corners at the end.
    /// </summary>
    private const int BracketsPerLevel = 5;

    private const int BracketsOfAPiece = 16;

    /// <summary>JSON values per line or arc: three numbers in a list, and its brackets.</summary>
    private const int ValuesPerSegment = 5;

    /// <exception cref="ImportException">It is no recipe, or beyond the limits.</exception>
    internal static Pattern Read(Stream stream, ImportLimits limits) =>
        Read(Text(Bytes(stream, limits)), limits);

    /// <inheritdoc cref="Read(Stream, ImportLimits)"/>
    internal static Pattern Read(ReadOnlyMemory<byte> text, ImportLimits limits)
    {
        var depth = BracketsPerLevel * limits.Depth + BracketsOfAPiece;
        try
        {
            Check(text.Span, depth, (long)ValuesPerSegment * limits.Segments);
            var options = new JsonDocumentOptions { MaxDepth = depth };
            using var json = JsonDocument.Parse(text, options);
            return RecipeDocument.Read(new(new RecipeReading(limits), json.RootElement));
        }
        catch (JsonException error)
        {
            var line = FormattableString.Invariant(
                $"line {error.LineNumber + 1}, byte {error.BytePositionInLine + 1}"
            );
            throw new ImportException(
                $"The file is no JSON: {Sentence(error.Message)}",
                line,
                ["a file saved by this library, changed with an editor that knows JSON"],
                error
            );
        }
    }

    /// <summary>Walks through the file, which makes nothing of it, before anything is made.</summary>
    private static void Check(ReadOnlySpan<byte> text, int depth, long most)
    {
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = depth });
        for (long values = 0; reader.Read(); values++)
        {
            if (values > most)
                throw new ImportException(
                    $"The recipe holds more than {most} values.",
                    remedies: ["a higher limit (ImportLimits.WithSegments)"]
                );
            if (reader is { TokenType: JsonTokenType.PropertyName, ValueIsEscaped: true })
                RefuseHalfACharacter(ref reader);
        }
    }

    /// <summary>Half a pair of surrogates in a name would stop every look for another name.</summary>
    private static void RefuseHalfACharacter(ref Utf8JsonReader reader)
    {
        try
        {
            reader.GetString();
        }
        catch (InvalidOperationException error)
        {
            throw new ImportException(
                "The name of a field holds half a character.",
                FormattableString.Invariant($"byte {reader.TokenStartIndex + 1}"),
                ["both \\u parts of the character"],
                error
            );
        }
    }

    private static byte[] Bytes(Stream stream, ImportLimits limits)
    {
        using var read = new MemoryStream();
        var buffer = new byte[1 << 16];
        int count;
        while ((count = stream.Read(buffer)) > 0)
        {
            if (read.Length + count > limits.Bytes)
                throw new ImportException(
                    $"The file is larger than {limits.Bytes} bytes.",
                    remedies: ["a higher limit (ImportLimits.WithBytes)"]
                );
            read.Write(buffer, 0, count);
        }
        return read.ToArray();
    }

    /// <summary>The text without the mark that some editors put before it. In UTF-16 every other byte of a bracket or a letter is 0.</summary>
    private static ReadOnlyMemory<byte> Text(byte[] bytes)
    {
        if (bytes is [0xFE, 0xFF, ..] or [0xFF, 0xFE, ..] or [0, ..] or [_, 0, ..])
            throw new ImportException(
                "The file is not UTF-8 text.",
                remedies: ["the file saved as UTF-8"]
            );
        if (!Utf8.IsValid(bytes))
            throw new ImportException(
                "The file is not UTF-8 text: some of its bytes are no letters.",
                remedies: ["the file saved as UTF-8"]
            );
        return bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes.AsMemory(3) : bytes;
    }

    /// <summary>The framework adds the place, which is told beside it.</summary>
    private static string Sentence(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        var said = end < 0 ? message : message[..end];
        // What a programmer could set does not help who writes a recipe.
        return said.Replace(
            " in this mode. Change the reader options.",
            ".",
            StringComparison.Ordinal
        );
    }
}
