namespace PatternGen.Gallery.Topics;

/// <summary>In which order a rail and a rosette are carved: schedules to print, and drawings with numbers and arrows.</summary>
internal sealed class PlanTopic(string folder) : ITopic
{
    private static readonly Stock Board = Stock.Thick(12).WithSpecies("lime");

    private static CarvingPlan Rail =>
        RailTopic.SideboardRail.Plan(CarvingTopic.Knife, Board).ByPasses();

    private static CarvingPlan Rosette =>
        PatternGen.Rosette.Wreathed(6, radius: 30).Carve(_ => true).Plan(CarvingTopic.Knife, Board);

    public string Title => "In which order to carve";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            .. Drawing("rail-order", Rail),
            .. Schedules("rail-order", Rail),
            .. Drawing("rosette-order", Rosette),
            .. Schedules("rosette-order", Rosette),
            .. Drawing("rosette-stabbed", Rosette.With(Technique.StabAndSlice)),
            new(
                "rosette-numbered.dxf",
                (path, stop) => Rosette.Numbered().SaveAsync(path, cancellation: stop)
            ),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            new(
                "rosette-order.png",
                "A rosette chip by chip: the numbers say which comes next, the arrows where each cut goes",
                [
                    "rosette-order.svg",
                    "rosette-order.md",
                    "rosette-order.csv",
                    "rosette-order.json",
                    "rosette-numbered.dxf",
                ]
            ),
            new(
                "rosette-stabbed.png",
                "The same, valleys stabbed first and sides sliced",
                ["rosette-stabbed.svg"]
            ),
            new(
                "rail-order.png",
                "The border of the rail in passes: all cuts that run one way, then the board is turned",
                ["rail-order.svg", "rail-order.md", "rail-order.csv", "rail-order.json"]
            ),
        ];

    private static IEnumerable<Work> Schedules(string name, CarvingPlan plan) =>
        ((string[])["md", "csv", "json"]).Select(format => new Work(
            $"{name}.{format}",
            (path, stop) => plan.Schedule().SaveAsync(path, stop)
        ));

    private IEnumerable<Work> Drawing(string name, CarvingPlan plan)
    {
        yield return new($"{name}.svg", (path, stop) => plan.Sheet().SaveAsync(path, stop));
        yield return Work.Picture($"{name}.png", folder, of: $"{name}.svg");
    }
}
