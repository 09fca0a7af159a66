using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A pattern as readable JSON, from which it is rebuilt to the same bytes: for other programs, and for batches.</summary>
/// <remarks>
/// <para>
/// A recipe says how a pattern is made in the words of the trade: rails, bands, rosettes, and what is done to them. It holds
/// the results of choices: numbers of parts, not the lambda that chose them, with the fingerprint of the figure that they
/// belong to; another figure is refused. Files of one version of the format are read by every later release.
/// </para>
/// <para>
/// <c>{ "patterngen": 1, "kind": "rail", "length": 742.5, "width": 36, "band": { "rules": [2, 4, 4, 2] }, "fromEdge": 6 }</c>
/// is a recipe. A field that is unknown or wrong is an <see cref="ImportException"/> with its path, such as
/// <c>$.band.rules[2]</c>. Immutable and safe to share between threads.
/// </para>
/// </remarks>
public sealed class Recipe
{
    private static readonly Lazy<string> SchemaOfAll = new(() =>
        RecipeDocument.WriteSchema().ToString()
    );

    internal Recipe(Pattern pattern) => Pattern = pattern;

    /// <summary>The pattern.</summary>
    public Pattern Pattern { get; }

    /// <summary>Version of the format that this library writes and reads: 1.</summary>
    public static int Version => RecipeDocument.Version;

    /// <summary>The JSON Schema (draft 2020-12) of recipes, for editors and for programs that write them.</summary>
    public static string Schema => SchemaOfAll.Value;

    /// <summary>Reads a recipe from a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limits">What it may ask for; <see cref="ImportLimits.Default"/> if not given.</param>
    /// <exception cref="ImportException">It is no recipe, describes an impossible pattern, or is beyond the limits.</exception>
    /// <exception cref="IOException">It can't be opened or read.</exception>
    public static Recipe Load(string path, ImportLimits? limits = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        using var stream = File.OpenRead(path);
        return Load(stream, limits);
    }

    /// <summary>Reads a recipe from a stream, which stays open.</summary>
    /// <param name="stream">Any readable stream of UTF-8 text.</param>
    /// <param name="limits">What it may ask for; <see cref="ImportLimits.Default"/> if not given.</param>
    /// <exception cref="ImportException">It is no recipe, describes an impossible pattern, or is beyond the limits.</exception>
    public static Recipe Load(Stream stream, ImportLimits? limits = null) =>
        new(RecipeFile.Read(Guard.NotNull(stream), limits ?? ImportLimits.Default));

    /// <summary>Reads a recipe from text.</summary>
    /// <param name="json">The JSON.</param>
    /// <param name="limits">What it may ask for; <see cref="ImportLimits.Default"/> if not given.</param>
    /// <exception cref="ImportException">It is no recipe, describes an impossible pattern, or is beyond the limits.</exception>
    public static Recipe Parse(string json, ImportLimits? limits = null) =>
        new(
            RecipeFile.Read(
                Encoding.UTF8.GetBytes(Guard.NotNull(json)),
                limits ?? ImportLimits.Default
            )
        );

    /// <summary>Writes the recipe to a file, which appears whole or not at all.</summary>
    /// <param name="path">The file, usually .json.</param>
    /// <exception cref="PatternException">The pattern is impossible as designed.</exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    public void Save(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var text = RecipeDocument.Write(Pattern);
        TargetFile.Write(path, stream => Write(text, stream));
    }

    /// <summary>Writes the recipe to a stream as UTF-8, forwards only; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    /// <exception cref="PatternException">The pattern is impossible as designed.</exception>
    public void Save(Stream stream)
    {
        OutputBuffer.Writable(stream);
        Write(RecipeDocument.Write(Pattern), stream);
    }

    /// <summary>Returns the recipe as text.</summary>
    /// <exception cref="PatternException">The pattern is impossible as designed.</exception>
    public override string ToString() => RecipeDocument.Write(Pattern).ToString();

    private static void Write(JsonText text, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true);
        text.WriteTo(writer);
    }
}
