using System.Text.Json;
using F = PatternGen.RecipeFieldOf<PatternGen.TriangleBand>;

namespace PatternGen;

/// <summary>Bands of triangles: their rules and rows, or the name of a sample.</summary>
internal sealed class BandType : RecipeType<TriangleBand>
{
    internal static readonly BandType Instance = new();

    private static readonly RecipeField<TriangleBand, IReadOnlyList<double>> Rules = F.Needed(
        "rules",
        "Distances in mm between the ruled lines, from the lower edge up. Of three or more the outermost two are margins.",
        new ListType<double>(
            RecipeSizes.Positive,
            "a list of distances",
            least: 1,
            most: TriangleBand.MaxRules - 1
        ),
        band => band.Spacings
    );

    private static readonly RecipeField<TriangleBand, IReadOnlyList<TriangleRow>?> Rows = F.Maybe(
        "rows",
        "The rows of chips. If left out there is a row in each strip but the margins, those of the lower half pointing up.",
        new ListType<TriangleRow>(
            RowType.Instance,
            "a list of rows",
            least: 1,
            most: 2 * TriangleBand.MaxRules
        ),
        band => HasUsualRows(band) ? null : band.Rows
    );

    private static readonly RecipeField<TriangleBand, double?> Pitch = F.Maybe(
        "pitch",
        "Length in mm of one repeat to aim at; twice the height of the tallest row if left out.",
        RecipeSizes.Positive,
        band => band.HasOwnPitch ? band.NominalPitch : null
    );

    private static readonly RecipeField<TriangleBand, double?> LineCuts = F.Maybe(
        "lineCuts",
        "Width in mm of V grooves along the outer rules of the margins; plain ground if left out.",
        RecipeSizes.Positive,
        band => band.Margins == BandMargin.LineCuts ? band.LineCutWidth : null
    );

    private static readonly ObjectType<TriangleBand> Described = new(
        "described-band",
        "A band of ruled lines with rows of three-sided chips between them.",
        new(Rules, Rows, Pitch, LineCuts),
        Make
    );

    internal override TriangleBand Read(RecipeValue value)
    {
        if (value.Json.ValueKind != JsonValueKind.String)
            return Described.Read(value);
        var name = value.Text("the name of a band");
        return BandSampler.All.FirstOrDefault(sample => sample.Name == name)?.Band
            ?? throw value.Fail(
                $"There is no sample band \"{RecipeValue.Shown(name)}\".",
                NearestName.Remedy(name, [.. Names], "one of these")
            );
    }

    internal override JsonText Write(TriangleBand value, RecipeWriting writing) =>
        Described.Write(value, writing);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        schema.Define(
            "band",
            () =>
                SchemaText.OneOf(
                    "A band, or the name of a sample.",
                    Described.Schema(schema),
                    SchemaText.OneOfWords(Names)
                )
        );

    private static IEnumerable<string> Names => BandSampler.All.Select(sample => sample.Name);

    private static TriangleBand Make(GivenFields given)
    {
        var band = TriangleBand.Ruled([.. given.Of(Rules)]);
        if (given.Of(Rows) is { } rows)
            band = band.WithRows([.. rows]);
        if (given.Of(LineCuts) is { } width)
            band = band.WithLineCuts(width);
        return given.Of(Pitch) is { } pitch ? band.WithPitch(pitch) : band;
    }

    private static bool HasUsualRows(TriangleBand band)
    {
        var usual = TriangleBand.Ruled(band.Spacings).Rows;
        return usual.Count == band.Rows.Count
            && usual.Zip(band.Rows).All(pair => RowType.AreAlike(pair.First, pair.Second));
    }
}
