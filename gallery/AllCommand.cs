using System.CommandLine;
using System.Text;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary><c>all</c>: every topic in a folder of its own, and a page that shows them.</summary>
internal static class AllCommand
{
    internal const string Name = "all";

    internal static Command Make()
    {
        var output = Outputs.Option(Path.Combine("gallery", "out"));
        var command = new Command(Name, "Makes everything, with an index.html to look at it.")
        {
            output,
        };
        command.SetAction(
            async (parsed, cancellation) =>
            {
                var folder = parsed.GetValue(output)!;
                ITopic[] topics =
                [
                    new RailTopic(RailTopic.SideboardRail, Path.Combine(folder, "rail")),
                    new BandsTopic(Path.Combine(folder, "bands")),
                    new RosettesTopic(Path.Combine(folder, "rosettes")),
                    new CarvingTopic(Path.Combine(folder, "carving")),
                    new InspectionTopic(Path.Combine(folder, "inspection")),
                    new PlanTopic(Path.Combine(folder, "order")),
                    new GroovesTopic(Path.Combine(folder, "grooves")),
                    CarvedPieces.Layouts(Path.Combine(folder, "layouts")),
                    CarvedPieces.Fields(Path.Combine(folder, "fields")),
                    CarvedPieces.FreeForms(Path.Combine(folder, "free-forms")),
                    new RecipesTopic(SampleRecipes.Files, Path.Combine(folder, "recipes")),
                ];
                foreach (var topic in topics)
                    await Reporter.RunAsync(topic, cancellation);
                var page = Path.Combine(folder, "index.html");
                var html = Encoding.UTF8.GetBytes(IndexPage.Of(folder, topics));
                TargetFile.Write(page, stream => stream.Write(html));
                Reporter.Say(page);
                return ExitCode.Done;
            }
        );
        return command;
    }
}
