namespace PatternGen.Tests.Output.Preview;

public class DepthScaleTests
{
    public static TheoryData<double> Depths => [0.04, 0.9, 2.9, 4, 4.6533, 8, 12.87, 73];

    [Theory]
    [MemberData(nameof(Depths))]
    public void Bands_follow_each_other_up_to_the_deepest(double deepest)
    {
        var scale = new DepthScale(deepest);
        scale.BandCount.ShouldBeInRange(3, 8);
        scale.StartOf(0).ShouldBe(0);
        for (var band = 1; band < scale.BandCount; band++)
            scale.StartOf(band).ShouldBe(scale.EndOf(band - 1));
        scale.EndOf(scale.BandCount - 1).ShouldBe(deepest, 1e-9);
        // 1, 2 or 5 and noughts.
        var step = scale.Step * Math.Pow(10, 6);
        while (Math.Round(step) % 10 == 0)
            step /= 10;
        new[] { 1.0, 2, 5 }.ShouldContain(n => Math.Abs(n - step) < 1e-6);
    }

    /// <summary>
    /// Relative luminance from WCAG 2.2, "relative luminance": deeper is darker, so that the scale can be read without
    /// colours, as on a grey print.
    /// </summary>
    [Theory]
    [MemberData(nameof(Depths))]
    public void Deeper_is_darker(double deepest)
    {
        var lights = Colours(new(deepest)).Select(Luminance).ToArray();
        for (var i = 1; i < lights.Length; i++)
            lights[i].ShouldBeLessThan(0.9 * lights[i - 1]);
    }

    /// <summary>
    /// Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of color vision deficiency" (2009),
    /// matrices for complete protanopia, deuteranopia and tritanopia, from memory: as those see them, neighbours still differ.
    /// </summary>
    [Fact]
    public void Eyes_that_miss_a_colour_tell_neighbours_apart()
    {
        double[][,] eyes =
        [
            new[,]
            {
                { 0.152286, 1.052583, -0.204868 },
                { 0.114503, 0.786281, 0.099216 },
                { -0.003882, -0.048116, 1.051998 },
            },
            new[,]
            {
                { 0.367322, 0.860646, -0.227968 },
                { 0.280085, 0.672501, 0.047413 },
                { -0.011820, 0.042940, 0.968881 },
            },
            new[,]
            {
                { 1.255528, -0.076749, -0.178779 },
                { -0.078411, 0.930809, 0.147602 },
                { 0.004733, 0.691367, 0.303900 },
            },
        ];
        foreach (var eye in eyes)
        {
            var seen = Colours(new(8)).Select(colour => Seen(colour, eye)).ToArray();
            for (var i = 1; i < seen.Length; i++)
                seen[i]
                    .Zip(seen[i - 1], (a, b) => (a - b) * (a - b))
                    .Sum()
                    .ShouldBeGreaterThan(4e-4);
        }
    }

    private static IEnumerable<double[]> Colours(DepthScale scale) =>
        Enumerable
            .Range(0, scale.BandCount)
            .Select(scale.ColourOf)
            .Select(text =>
                Enumerable
                    .Range(0, 3)
                    .Select(part => Convert.ToInt32(text.Substring(1 + 2 * part, 2), 16) / 255.0)
                    .Select(part =>
                        part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4)
                    )
                    .ToArray()
            );

    private static double Luminance(double[] linear) =>
        0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];

    private static double[] Seen(double[] linear, double[,] eye) =>
        [
            .. Enumerable
                .Range(0, 3)
                .Select(row => Enumerable.Range(0, 3).Sum(part => eye[row, part] * linear[part])),
        ];
}
