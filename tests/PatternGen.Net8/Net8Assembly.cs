using System.Reflection;
using System.Runtime.Versioning;

namespace PatternGen.Net8;

public class Net8Assembly
{
    [Fact]
    public void The_net8_assembly_is_the_one_that_runs()
    {
        var library = typeof(Vector).Assembly;
        var target = library.GetCustomAttribute<TargetFrameworkAttribute>();

        target.ShouldNotBeNull().FrameworkName.ShouldBe(".NETCoreApp,Version=v8.0");
    }

    [Fact]
    public void It_does_the_main_job()
    {
        var border = Rail.Of(length: 742.5, width: 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6);
        using var svg = new MemoryStream();
        using var dxf = new MemoryStream();

        border.Save(svg, FileFormat.Svg, For.Paper).ChipCount.ShouldBe(182);
        border.Save(dxf, FileFormat.Dxf, For.Machine).ChipCount.ShouldBe(182);

        border
            .Fit.ToString()
            .ShouldBe("91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike");
        svg.Length.ShouldBePositive();
        dxf.Length.ShouldBePositive();
        border.ToSvgDocument().Width.Value.ShouldBeGreaterThan(742.5f);
    }

    [Fact]
    public void Outlines_can_be_offset()
    {
        var square = Contour.Rectangle(new(0, 0), new(10, 10));

        // Grown by 1 with round corners: 100 + 4 × 10 + π.
        square.Offset(1).Area.ShouldBe(140 + Math.PI, 1e-9);
    }
}
