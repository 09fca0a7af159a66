namespace PatternGen.Tests.Output.Saving;

/// <summary>A number cast to an enumeration may be none of its values.</summary>
public class UndefinedValueTests
{
    [Fact]
    public void Undefined_values_are_refused_and_named()
    {
        IsRefused("purpose", () => Save(FileFormat.Svg, (For)99));
        IsRefused("purpose", () => Save(FileFormat.Dxf, (For)99));
        IsRefused("format", () => Save((FileFormat)9, For.Machine));
        IsRefused("sharedSides", () => SaveOptions.Default.WithSharedSides((SharedSides)9));
        IsRefused("version", () => SaveOptions.Default.WithDxfVersion((DxfVersion)9));
        IsRefused("repeats", () => SaveOptions.Default.WithRepeats((Repeats)9));
        IsRefused("ends", () => Fitting.Default.StaggeredRows((StaggeredEnds)9));
        IsRefused("pointing", () => TriangleBand.Ruled(2, 4, 2).Following((Pointing)9));
    }

    private static void Save(FileFormat format, For purpose) =>
        Samples.Rail().Save(Stream.Null, format, purpose);

    private static void IsRefused(string name, Action call) =>
        Should.Throw<ArgumentOutOfRangeException>(call).ParamName.ShouldBe(name);
}
