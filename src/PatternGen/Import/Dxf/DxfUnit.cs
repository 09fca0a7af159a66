namespace PatternGen;

/// <summary>How many millimetres one unit of a file is.</summary>
/// <remarks>The numbers are those of $INSUNITS in the DXF Reference; those of survey are 1200/3937 m to the foot.</remarks>
internal sealed record DxfUnit(double Millimetres)
{
    private const double Inch = 25.4;
    private const double SurveyFoot = 1200e3 / 3937;

    internal static DxfUnit Of(DxfHeader header, ImportedCurves curves)
    {
        if (curves.Settings.Unit is { } asked)
            return new(asked);
        if (header.Unit is { } unit && unit != 0)
        {
            if (MillimetresOf(unit) is { } known)
                return new(known);
            curves.Note(
                ImportNoteKind.Assumed,
                $"unit {unit} of the header is none that wood is measured in: taken as millimetres",
                header.UnitLine
            );
            return new(1);
        }
        curves.Note(
            ImportNoteKind.Assumed,
            header.IsInInches
                ? "no unit given, though the file measures in feet and inches: taken as millimetres"
                : "no unit given: taken as millimetres"
        );
        return new(1);
    }

    private static double? MillimetresOf(int unit) =>
        unit switch
        {
            1 => Inch,
            2 => 12 * Inch,
            3 => 63360 * Inch,
            4 => 1,
            5 => 10,
            6 => 1e3,
            7 => 1e6,
            8 => Inch / 1e6,
            9 => Inch / 1e3,
            10 => 36 * Inch,
            11 => 1e-7,
            12 => 1e-6,
            13 => 1e-3,
            14 => 100,
            15 => 1e4,
            16 => 1e5,
            21 => SurveyFoot,
            22 => SurveyFoot / 12,
            23 => SurveyFoot * 3,
            24 => SurveyFoot * 5280,
            _ => null,
        };
}
