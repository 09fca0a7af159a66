using System.Text.Json;
using System.Text.RegularExpressions;

namespace PatternGen;

/// <summary>A value in a recipe that is read, and where it stands.</summary>
internal sealed partial class RecipeValue
{
    /// <summary>Longest name that is repeated in a message; a longer one is cut off.</summary>
    private const int LongestName = 40;

    private readonly RecipeValue? _parent;
    private readonly string _step;

    internal RecipeValue(RecipeReading reading, JsonElement json)
        : this(reading, json, null, "$") { }

    private RecipeValue(RecipeReading reading, JsonElement json, RecipeValue? parent, string step)
    {
        Reading = reading;
        Json = json;
        _parent = parent;
        _step = step;
    }

    internal RecipeReading Reading { get; }

    internal JsonElement Json { get; }

    /// <summary>Where it stands: <c>$.parts[0].band.rows[2].lean</c>.</summary>
    internal string Path
    {
        get
        {
            var steps = new List<string>();
            for (var value = this; value is not null; value = value._parent)
                steps.Add(value._step);
            steps.Reverse();
            return string.Concat(steps);
        }
    }

    internal RecipeValue Member(string name, JsonElement json) =>
        new(Reading, json, this, StepTo(name));

    internal RecipeValue Item(int index, JsonElement json) =>
        new(Reading, json, this, FormattableString.Invariant($"[{index}]"));

    /// <summary>Where a member stands, or would stand.</summary>
    internal string PathOf(string name) => Path + StepTo(name);

    /// <summary>Returns the error that it is something else.</summary>
    /// <param name="wanted">What is wanted, with its article: "a list of rows".</param>
    internal ImportException Not(string wanted) =>
        Fail($"Here stands {What}, but {wanted} is wanted.");

    internal ImportException Fail(string problem, params string[] remedies) =>
        new(problem, Path, remedies);

    /// <summary>Its text.</summary>
    /// <exception cref="ImportException">It is no text.</exception>
    internal string Text(string wanted)
    {
        if (Json.ValueKind != JsonValueKind.String)
            throw Not(wanted);
        try
        {
            return Json.GetString()!;
        }
        catch (InvalidOperationException error)
        {
            throw new ImportException(
                "The text holds half a character.",
                Path,
                ["both \\u parts of the character"],
                error
            );
        }
    }

    /// <summary>A name as it is repeated in messages.</summary>
    internal static string Shown(string name) =>
        name.Length <= LongestName ? name : name[..LongestName] + "…";

    private string What =>
        Json.ValueKind switch
        {
            JsonValueKind.Object => "an object",
            JsonValueKind.Array => "a list",
            JsonValueKind.String => "a text",
            JsonValueKind.Number => "the number " + Shown(Json.GetRawText()),
            JsonValueKind.Null => "null",
            _ => Json.GetRawText(),
        };

    private static string StepTo(string name) =>
        Plain().IsMatch(name) ? "." + Shown(name) : $"['{Shown(name)}']";

    [GeneratedRegex("^[$A-Za-z_][A-Za-z0-9_]*$")]
    private static partial Regex Plain();
}
