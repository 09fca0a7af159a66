using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Output.Svg;

/// <summary>A piece of a path as its text says it: a line, or an arc with radius and flags.</summary>
internal sealed record ReadPiece(Point Start, Point End, double Radius, bool IsLarge, bool IsSweep)
{
    internal bool IsLine => Radius == 0;

    /// <summary>The signed angle of an arc, SVG Implementation Notes, "Conversion from endpoint to center parameterization".</summary>
    internal double Turn => Centred().Turn;

    /// <summary>Evenly spaced points, both ends included.</summary>
    internal IEnumerable<Point> Sample(int count)
    {
        if (IsLine)
            return Enumerable
                .Range(0, count + 1)
                .Select(i => Start.Towards(End, (double)i / count));
        var (centre, radius, from, turn) = Centred();
        return Enumerable
            .Range(0, count + 1)
            .Select(i => from + turn * i / count)
            .Select(angle => new Point(
                centre.X + radius * Math.Cos(angle),
                centre.Y + radius * Math.Sin(angle)
            ));
    }

    private (Point Centre, double Radius, double From, double Turn) Centred()
    {
        var half = (Start - End) / 2;
        var radius = Math.Max(Radius, half.Length);
        var root = Math.Sqrt(Math.Max(0, radius * radius / half.LengthSquared - 1));
        var sign = IsLarge == IsSweep ? -1 : 1;
        var centre = Start.Towards(End, 0.5) + new Vector(half.Y, -half.X) * (sign * root);
        var from = Math.Atan2(Start.Y - centre.Y, Start.X - centre.X);
        var to = Math.Atan2(End.Y - centre.Y, End.X - centre.X);
        var turn = to - from;
        if (IsSweep && turn < 0)
            turn += Math.Tau;
        else if (!IsSweep && turn > 0)
            turn -= Math.Tau;
        return (centre, radius, from, turn);
    }
}

/// <summary>Reads the path data that the writer may use: absolute M, L, A and Z. Anything else is an error.</summary>
internal static partial class SvgPathReader
{
    internal static IReadOnlyList<IReadOnlyList<ReadPiece>> Read(string data)
    {
        var runs = new List<List<ReadPiece>>();
        var (start, at) = (Point.Origin, Point.Origin);
        foreach (Match command in Commands().Matches(data))
        {
            var numbers = Numbers(command.Groups[2].Value);
            switch (command.Groups[1].Value, numbers.Length)
            {
                case ("M", 2):
                    runs.Add([]);
                    start = at = new(numbers[0], numbers[1]);
                    continue;
                case ("L", 2):
                    Add(new(numbers[0], numbers[1]), 0, 0, 0);
                    continue;
                case ("A", 7):
                    numbers[0].ShouldBe(numbers[1]);
                    numbers[2].ShouldBe(0);
                    Add(new(numbers[5], numbers[6]), numbers[0], numbers[3], numbers[4]);
                    continue;
                case ("Z", 0):
                    if (at != start)
                        Add(start, 0, 0, 0);
                    continue;
                default:
                    throw new FormatException($"Unexpected '{command.Value}' in {data}");
            }
        }
        string.Concat(Commands().Matches(data).Select(match => match.Value)).ShouldBe(data);
        return runs;

        void Add(Point end, double radius, double isLarge, double isSweep)
        {
            runs[^1].Add(new(at, end, radius, isLarge == 1, isSweep == 1));
            at = end;
        }
    }

    private static double[] Numbers(string text) =>
        [
            .. text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(number => double.Parse(number, CultureInfo.InvariantCulture)),
        ];

    [GeneratedRegex(@"([A-Za-z])([^A-Za-z]*)")]
    private static partial Regex Commands();
}
