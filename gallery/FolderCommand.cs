using System.CommandLine;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary>The commands that take nothing but a folder.</summary>
internal static class FolderCommand
{
    /// <summary><c>bands</c>: the sample bands, each and all on one sheet.</summary>
    internal static Command Bands() =>
        Make(
            "bands",
            "Draws the sample bands, each by itself and all on one sheet.",
            Outputs.Option("bands"),
            folder => new BandsTopic(folder)
        );

    /// <summary><c>rosettes</c>: the sample rosettes, all designs of one, its key, and how two are drawn.</summary>
    internal static Command Rosettes() =>
        Make(
            "rosettes",
            "Draws the sample rosettes, all designs and the key of one, and step sheets.",
            Outputs.Option("rosettes"),
            folder => new RosettesTopic(folder)
        );

    /// <summary><c>carving</c>: carved wood in the light, depths and a section.</summary>
    internal static Command Carving() =>
        Make(
            "carving",
            "Draws a border and rosettes as they look carved, their depths, and a section.",
            Outputs.Option("carving"),
            folder => new CarvingTopic(folder)
        );

    /// <summary><c>inspection</c>: faults made on purpose, found and marked.</summary>
    internal static Command Inspection() =>
        Make(
            "inspection",
            "Inspects a board with faults made on purpose, and marks each with what would clear it.",
            Outputs.Option("inspection"),
            folder => new InspectionTopic(folder)
        );

    /// <summary><c>order</c>: schedules and numbered drawings.</summary>
    internal static Command Order() =>
        Make(
            "order",
            "Plans in which order a rail and a rosette are carved: schedules, and drawings with numbers.",
            Outputs.Option("order"),
            folder => new PlanTopic(folder)
        );

    /// <summary><c>grooves</c>: where a V bit goes.</summary>
    internal static Command Grooves() =>
        Make(
            "grooves",
            "Writes the groove paths of a V bit through a rosette, and draws them from above.",
            Outputs.Option("grooves"),
            folder => new GroovesTopic(folder)
        );

    /// <summary><c>layouts</c>: frames, a ring, a vine along an imported outline, a panel.</summary>
    internal static Command Layouts() =>
        Make(
            "layouts",
            "Draws frames with different corners, a ring, a vine along an outline from a file, and a panel.",
            Outputs.Option("layouts"),
            CarvedPieces.Layouts
        );

    /// <summary><c>fields</c>: lattices within outlines.</summary>
    internal static Command Fields() =>
        Make(
            "fields",
            "Draws nine fields: triangles, squares, diamonds, hexagons, circles, scales and more.",
            Outputs.Option("fields"),
            CarvedPieces.Fields
        );

    /// <summary><c>free-forms</c>: leaves, flowers and stems.</summary>
    internal static Command FreeForms() =>
        Make(
            "free-forms",
            "Draws leaves, strokes, flowers, scrolls and stems.",
            Outputs.Option("free-forms"),
            CarvedPieces.FreeForms
        );

    /// <summary><c>readme</c>: for developers, so not listed.</summary>
    internal static Command Readme()
    {
        var command = Make(
            "readme",
            "Draws the pictures of the README anew.",
            Outputs.Option(Path.Combine("gallery", "pictures")),
            folder => new ReadmeTopic(folder)
        );
        command.Hidden = true;
        return command;
    }

    private static Command Make(
        string name,
        string description,
        Option<string> output,
        Func<string, ITopic> topic
    )
    {
        var command = new Command(name, description) { output };
        command.SetAction(
            async (parsed, cancellation) =>
            {
                await Reporter.RunAsync(topic(parsed.GetValue(output)!), cancellation);
                return ExitCode.Done;
            }
        );
        return command;
    }
}
