namespace PatternGen.Gallery.Topics;

/// <summary>The rosette families, how two of them are drawn, and all designs that one drawing holds.</summary>
internal sealed class RosettesTopic(string folder) : ITopic
{
    private static Rosette Twelve => Rosette.Overlaid(2, 6, 40);

    private static DesignSet SixTurns => Twelve.AllDesigns(Symmetry.TurnsOf(6));

    public string Title => "Rosettes drawn with the compass";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("rosettes.svg", (path, stop) => Families.SaveAsync(path, cancellation: stop)),
            Work.Picture("rosettes.png", folder, of: "rosettes.svg"),
            new("designs.svg", (path, stop) => Designs.SaveAsync(path, cancellation: stop)),
            Work.Picture("designs.png", folder, of: "designs.svg"),
            new(
                "key.svg",
                (path, stop) => Twelve.Key().SaveAsync(path, For.Paper, cancellation: stop)
            ),
            Work.Picture("key.png", folder, of: "key.svg"),
            new(
                "designs-key.svg",
                (path, stop) => SixTurns.Key().SaveAsync(path, For.Paper, cancellation: stop)
            ),
            Work.Picture("designs-key.png", folder, of: "designs-key.svg"),
            .. Steps("twelve-petals", Rosette.Petals(12, 40)),
            .. Steps("two-times-six", Twelve),
            .. RosetteSampler.All.SelectMany(Files),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            new("rosettes.png", "The sample rosettes on one sheet", ["rosettes.svg"]),
            new(
                "designs.png",
                "All designs that the drawing of two times six petals holds, if each is to look the same after a sixth of a turn; under each its id",
                ["designs.svg"]
            ),
            new(
                "key.png",
                "The same drawing with its orbits numbered: choose from it which to carve",
                ["key.svg"]
            ),
            new(
                "designs-key.png",
                "The numbers in the ids of the designs above: t6-2-4 carves 2 and 4",
                ["designs-key.svg"]
            ),
            Steps("twelve-petals-steps", "How twelve petals are drawn"),
            Steps("two-times-six-steps", "How two times six petals are drawn"),
            .. RosetteSampler.All.Select(sample => new Exhibit(
                $"{FileName(sample)}.png",
                string.Join(". ", sample.Carved.Caption().Prepend(sample.Name)),
                [$"{FileName(sample)}.svg", $"{FileName(sample)}.dxf"]
            )),
        ];

    private static Pattern Families =>
        ContactSheet.Of(
            "Rosettes drawn with the compass",
            RosetteSampler.All.Select(sample => ((Pattern)sample.Carved, sample.Name)),
            columns: 4
        );

    private static Pattern Designs =>
        ContactSheet.Of(
            "Two times six petals, all designs that look the same after a sixth of a turn",
            SixTurns.Select(design => ((Pattern)design.Carve().WithDrawing(), design.Id)),
            columns: 6
        );

    private static Exhibit Steps(string name, string caption) =>
        new($"{name}.png", caption, [$"{name}.svg"]);

    private IEnumerable<Work> Steps(string name, CompassDrawing drawing)
    {
        var sheet = $"{name}-steps.svg";
        yield return new(sheet, (path, stop) => drawing.Steps().SaveAsync(path, stop));
        yield return Work.Picture($"{name}-steps.png", folder, of: sheet);
    }

    private IEnumerable<Work> Files(NamedRosette sample)
    {
        var name = FileName(sample);
        yield return new(
            $"{name}.svg",
            (path, stop) => sample.Carved.SaveAsync(path, cancellation: stop)
        );
        yield return new(
            $"{name}.dxf",
            (path, stop) => sample.Carved.SaveAsync(path, cancellation: stop)
        );
        yield return Work.Picture($"{name}.png", folder, of: $"{name}.svg");
    }

    private static string FileName(NamedRosette sample) =>
        sample.Name.ToLowerInvariant().Replace(' ', '-');
}
