using PatternGen.Tests.Motifs;

namespace PatternGen.Tests.Chips;

public class RosetteRoofSpecs
{
    public static TheoryData<int> Counts => [3, 4, 5, 6, 7, 8, 9, 12, 13, 17, 24, 36];

    [Theory]
    [MemberData(nameof(Counts))]
    public void Every_face_of_every_family_can_be_carved(int count)
    {
        foreach (var (name, rosette, _) in RosetteFamilies.Of(count))
        foreach (var part in DistinctParts(rosette))
            RoofCheck.ShouldBeSound(
                Roof.Over(part),
                $"{name} of {count}, {Geometry.Draw.Print(part.Outer)}"
            );
    }

    /// <summary>One face for each size, since those of one orbit are the same but for rounding.</summary>
    private static IEnumerable<RegionPart> DistinctParts(Rosette rosette) =>
        rosette
            .Arrangement.BoundedFaces.Select(face => face.ToPart())
            .DistinctBy(part => Math.Round(part.Area / 1e-6));
}
