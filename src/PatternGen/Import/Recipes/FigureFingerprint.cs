using System.Buffers.Binary;
using System.Security.Cryptography;

namespace PatternGen;

/// <summary>Identifies a figure: its lines to a millionth of a mm, and how its parts are numbered.</summary>
/// <remarks>
/// The first 16 hexadecimal digits of the SHA-256 of numbers of 8 bytes, the lowest first: for each line its coordinates
/// in millionths; then the number of parts, and the orbit of each. So it is the same on every system, where the last
/// digits of a sine may not be.
/// </remarks>
internal static class FigureFingerprint
{
    private const double Steps = 1e6;
    private const int Digits = 16;

    internal static string Of(CompassDrawing drawing)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var bytes = new byte[sizeof(long)];
        foreach (var number in Numbers(drawing))
        {
            BinaryPrimitives.WriteInt64LittleEndian(bytes, number);
            hash.AppendData(bytes);
        }
        return Convert.ToHexString(hash.GetHashAndReset())[..Digits].ToLowerInvariant();
    }

    /// <exception cref="PatternException">The figure is another.</exception>
    internal static void RefuseOther(CompassDrawing drawing, string fingerprint)
    {
        var own = Of(drawing);
        if (own != fingerprint)
            throw new PatternException(
                $"The figure is not the one whose parts were chosen: its fingerprint is \"{own}\", not \"{RecipeValue.Shown(fingerprint)}\", so the numbers may mean other parts.",
                remedies:
                [
                    "the drawing as it was when the recipe was saved",
                    "the fingerprint left out, to carve the parts of these numbers in the drawing as it is now: look at them before you do",
                ]
            );
    }

    private static IEnumerable<long> Numbers(CompassDrawing drawing)
    {
        foreach (var curve in drawing.Curves)
        {
            double[] sizes = curve.IsCircle
                ? [curve.Circle.Centre.X, curve.Circle.Centre.Y, curve.Circle.Radius]
                :
                [
                    curve.Segment.Start.X,
                    curve.Segment.Start.Y,
                    curve.Segment.End.X,
                    curve.Segment.End.Y,
                    curve.Segment.Bulge,
                ];
            yield return sizes.Length;
            foreach (var size in sizes)
                yield return (long)Math.Round(size * Steps);
        }
        yield return drawing.Parts.Count;
        foreach (var part in drawing.Parts)
            yield return part.Orbit;
    }
}
