using System.Globalization;

namespace PatternGen;

/// <summary>English for lists of marked points, and for how often a step is made.</summary>
internal static class PointWords
{
    /// <summary>A longer list of ways is told by its start and its end.</summary>
    private const int MostWays = 4;

    private static readonly string[] Numbers =
    [
        "no",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
    ];

    private static readonly string[] Ordinals =
    [
        "last",
        "first",
        "second",
        "third",
        "fourth",
        "fifth",
        "sixth",
        "seventh",
        "eighth",
        "ninth",
        "tenth",
        "eleventh",
        "twelfth",
    ];

    /// <summary><c>A</c>, <c>2 and 3</c>, <c>2 to 6</c>, <c>1, 3 and 5 to 9</c>, <c>1, 3 and so on to 11</c>.</summary>
    internal static string List(IEnumerable<MarkedPoint> points)
    {
        string[] labels = [.. points.Select(point => point.Label).Distinct()];
        List<string> runs = [];
        for (var i = 0; i < labels.Length; )
        {
            var length = RunFrom(labels, i);
            var last = labels[i + length - 1];
            runs.Add(
                length == 1 ? last
                : Step(labels[i], labels[i + 1]) == 1 ? $"{labels[i]} to {last}"
                : $"{labels[i]}, {labels[i + 1]} and so on to {last}"
            );
            i += length;
        }
        return And([.. runs]);
    }

    /// <summary><c>from 1 to 3, from 3 to 5 and from 5 to 1</c>.</summary>
    /// <remarks>What all ways have in common is told once: <c>from A to each of 1 to 6</c>, <c>from 1 to 7 and 12</c>.</remarks>
    internal static string Ways(
        IReadOnlyList<MarkedPoint> from,
        IReadOnlyList<MarkedPoint> to,
        string before = "from",
        string between = "to"
    )
    {
        if (from.Count > 1 && from.Distinct().Count() == 1)
            return $"{before} {from[0].Label} {between} {EachOf(to)}";
        if (from.Count > 1 && to.Distinct().Count() == 1)
            return $"{before} {EachOf(from)} {between} {to[0].Label}";
        return InTurn(
            from.Zip(to)
                .GroupBy(way => way.First, way => way.Second)
                .Select(ways => $"{before} {ways.Key.Label} {between} {List(ways)}")
        );
    }

    /// <summary><c>A</c>, <c>each of 1 to 6</c>.</summary>
    internal static string EachOf(IReadOnlyList<MarkedPoint> points) =>
        points.Distinct().Count() == 1 ? points[0].Label : $"each of {List(points)}";

    /// <summary>A list, of which a long one is told by its start and its end.</summary>
    internal static string InTurn(IEnumerable<string> things, string and = "and")
    {
        string[] all = [.. things];
        return all.Length <= MostWays
            ? And(all, and)
            : $"{all[0]}, {all[1]} and so on, the last {all[^1]}";
    }

    /// <summary><c>six</c>, <c>13</c>.</summary>
    internal static string Number(int count) =>
        count < Numbers.Length ? Numbers[count] : FormattableString.Invariant($"{count}");

    /// <summary><c>once</c>, <c>twice</c>, <c>six times</c>.</summary>
    internal static string Times(int count) =>
        count switch
        {
            1 => "once",
            2 => "twice",
            _ => $"{Number(count)} times",
        };

    /// <summary><c>sixth</c>, <c>13th</c>, <c>21st</c>.</summary>
    internal static string Ordinal(int count)
    {
        if (count < Ordinals.Length)
            return Ordinals[count];
        var ending = (count % 100 / 10 == 1 ? 0 : count % 10) switch
        {
            1 => "st",
            2 => "nd",
            3 => "rd",
            _ => "th",
        };
        return FormattableString.Invariant($"{count}{ending}");
    }

    private static string And(string[] things, string and = "and") =>
        things.Length == 1 ? things[0] : $"{string.Join(", ", things[..^1])} {and} {things[^1]}";

    /// <summary>How many labels from one on are told as a run: numbers in a row, or many that go up evenly.</summary>
    private static int RunFrom(string[] labels, int start)
    {
        if (start + 1 == labels.Length)
            return 1;
        var step = Step(labels[start], labels[start + 1]);
        var end = start + 2;
        while (end < labels.Length && Step(labels[end - 1], labels[end]) == step)
            end++;
        var length = end - start;
        return step > 0 && length > (step == 1 ? 2 : MostWays) ? length : 1;
    }

    private static int Step(string label, string next) =>
        int.TryParse(label, CultureInfo.InvariantCulture, out var before)
        && int.TryParse(next, CultureInfo.InvariantCulture, out var after)
            ? after - before
            : 0;
}
