using System.Text;

namespace PatternGen.Gallery;

/// <summary>Writes files that are not patterns; like patterns, whole or not at all.</summary>
internal static class WholeFile
{
    internal static void Write(string path, string text) =>
        Write(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));

    internal static void Write(string path, byte[] content)
    {
        var part = path + ".part";
        try
        {
            File.WriteAllBytes(part, content);
            File.Move(part, path, overwrite: true);
        }
        catch
        {
            File.Delete(part);
            throw;
        }
    }
}
