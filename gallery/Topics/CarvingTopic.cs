using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>How patterns look carved, and how deep they are.</summary>
internal sealed class CarvingTopic(string folder) : ITopic
{
    /// <summary>The wood of the samples.</summary>
    private static readonly Stock Board = Stock.Thick(12).WithSpecies("lime");

    /// <summary>The knife of the samples: as it is usually held, but flatter for wide chips.</summary>
    internal static readonly Knife Knife = Knife.Held(degrees: 65).NoDeeperThan(4);

    public string Title => "How it will look carved";

    public string Folder => folder;

    public IReadOnlyList<Work> Works => [.. Drawings.SelectMany(drawing => drawing.Works(folder))];

    public IReadOnlyList<Exhibit> Exhibits => [.. Drawings.Select(drawing => drawing.Exhibit)];

    private static RailBorder Border => RailTopic.SideboardRail;

    private static IReadOnlyList<Drawing> Drawings =>
        [
            new(
                "rail-carved",
                "The border of the rail as it will look: 65 degrees, light from the upper left",
                Border.Preview(Knife).SaveAsync
            ),
            new(
                "rosettes-carved",
                "Six rosettes carved; for wide chips the knife is held flatter, down to 40 degrees, so that they get little deeper than 4 mm",
                CarvedSamples.SixRosettes.Preview(Knife).SaveAsync
            ),
            new(
                "rosettes-low-light",
                "The same in low light from the right",
                CarvedSamples
                    .SixRosettes.Preview(Knife)
                    .LitFrom(direction: 80, height: 25)
                    .SaveAsync
            ),
            new(
                "rosettes-depth",
                "Their depths in colours, with lines every half millimetre",
                CarvedSamples
                    .SixRosettes.Preview(Knife)
                    .WithDepthColours()
                    .WithDepthLines(0.5)
                    .SaveAsync
            ),
            new(
                "petals-depth-lines",
                "Lines of equal depth on carved petals, every half millimetre",
                CarvedSamples.Petals.Preview(Knife).WithDepthLines(0.5).SaveAsync
            ),
            new(
                "petals-section",
                "A section through these petals, true size",
                CarvedSamples
                    .Petals.Section(new Point(-46, 12), new Point(46, 12), Board, Knife)
                    .SaveAsync
            ),
        ];

    /// <summary>A drawing, with a picture of it.</summary>
    /// <param name="Name">Its file's name.</param>
    /// <param name="Caption">What it shows.</param>
    /// <param name="Save">Saves it as SVG.</param>
    private sealed record Drawing(
        string Name,
        string Caption,
        Func<string, CancellationToken, Task> Save
    )
    {
        internal Exhibit Exhibit => new($"{Name}.png", Caption, [$"{Name}.svg"]);

        internal IEnumerable<Work> Works(string folder) =>
            [new($"{Name}.svg", Save), Work.Picture($"{Name}.png", folder, of: $"{Name}.svg")];
    }
}
