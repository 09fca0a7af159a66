using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Motifs.FreeForm;

internal static partial class FreeFormChecks
{
    /// <summary>Chips are sound, and the inspection finds none that overlap.</summary>
    internal static void ShouldNotOverlap(Pattern pattern)
    {
        foreach (var chip in pattern.Chips)
        {
            chip.Outline.Validate().IsValid.ShouldBeTrue(chip.ToString());
            chip.Outline.SignedArea.ShouldBeGreaterThan(0);
        }
        var found = pattern.Inspect(Knife.Held(65), Stock.Thick(60)).Findings;
        found.Where(finding => finding.Kind == FindingKind.ChipsOverlap).ShouldBeEmpty();
    }

    /// <summary>Least distance between two chips.</summary>
    internal static double Distance(Chip a, Chip b) =>
        a.Outline.Segments.Min(side =>
            b.Outline.Segments.Min(other => side.NearestTo(other).Distance)
        );

    /// <summary>The first number in a remedy.</summary>
    internal static double NumberIn(string remedy) =>
        double.Parse(Number().Match(remedy).Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
