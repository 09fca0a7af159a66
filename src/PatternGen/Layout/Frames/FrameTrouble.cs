using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Says why a frame can't be carved as asked, and what would work.</summary>
internal static class FrameTrouble
{
    /// <summary>Between mitres the ends are given: they are cut by the mitres and match.</summary>
    internal static void RefuseInMitre(Fitting fitting, bool turned)
    {
        if (fitting.LeftMargin > 0 || fitting.RightMargin > 0)
            throw new PatternException(
                "A mitred band runs right into the corners, so its sides have no end margins.",
                remedies: ["no end margins", "a motif in each corner (Corners), with a margin"]
            );
        if (fitting.StaggeredEnds != StaggeredEnds.HalfGaps)
            throw new PatternException(
                "The staggered rows of a mitred band run into the corners and are cut by the mitres, so their ends can't be chosen.",
                remedies: ["the default for staggered rows", "a motif in each corner (Corners)"]
            );
        if (fitting.Ends == EndRule.HalfTurn)
            throw new PatternException(
                "A mitre asks for mirror images, so the ends of a side can't match by a half turn.",
                remedies: ["ends as they come", "a motif in each corner (Corners)"]
            );
        if (turned && fitting.Parity == RepeatParity.Odd && fitting.Centre is null)
            throw new PatternException(
                "A leaning band turns round at the middle of each side, so no repeat stands there.",
                remedies:
                [
                    "a gap on the centre line",
                    "the band running round one way (RunningRound)",
                ]
            );
    }

    internal static PatternException NoRoomBetween(FrameOutline outline, int side, FrameRing ring)
    {
        var edge = outline.Sides[side];
        var taken = edge.Length - Math.Min(edge.LengthAt(ring.From), edge.LengthAt(ring.To));
        return new(
            $"A side {Guard.Text(edge.Length)} mm long is too short for the corners of a band that reaches {Guard.Text(ring.To)} mm inwards: "
                + $"they take {Guard.Text(taken)} mm.",
            outline.Corners[side],
            [
                $"a side of more than {Guard.Text(taken)} mm",
                "a lower band",
                "a band nearer to the edge",
            ]
        );
    }

    internal static PatternException NoRoomBeside(
        FrameOutline outline,
        int side,
        double first,
        double last
    )
    {
        var length = outline.Sides[side].Length;
        return new(
            $"The corners take {Guard.Text(first)} and {Guard.Text(last)} mm of a side {Guard.Text(length)} mm long, which leaves nothing for the band.",
            outline.Corners[side],
            [$"a side of more than {Guard.Text(first + last)} mm", "smaller corners"]
        );
    }

    /// <summary>Refuses corners that point into the frame, for what can only be drawn in corners that point out.</summary>
    internal static void RefuseReflex(FrameOutline outline, string what)
    {
        for (var corner = 0; corner < outline.Sides.Count; corner++)
            if (outline.Sides[corner].First < 0)
                throw new PatternException(
                    $"{what} fits corners that point out, but this one points into the frame.",
                    outline.Corners[corner],
                    ["mitred corners (Mitred)", "a motif in each corner (Corners)"]
                );
    }

    /// <summary>Refuses a motif in the middle of the sides that reaches beyond the members.</summary>
    internal static void RefuseCentreOff(Frame frame, FrameRing ring)
    {
        if (ring.Fitting.Centre?.Extents is not { } motif)
            return;
        var middle = (ring.From + ring.To) / 2;
        var (below, above) = (middle, frame.MemberWidth - middle);
        var rounding = Tolerance.ForExtent(frame.MemberWidth).Merge;
        if (-motif.Min.Y <= below + rounding && motif.Max.Y <= above + rounding)
            return;
        throw new PatternException(
            $"The centre motif reaches {Guard.Text(-motif.Min.Y)} mm out and {Guard.Text(motif.Max.Y)} mm in from the middle of the band, "
                + $"but the edges of the member are {Guard.Text(below)} and {Guard.Text(above)} mm away.",
            frame
                .Outline.Sides[0]
                .Placement.Apply(new Point(frame.Outline.Sides[0].Length / 2, middle)),
            [
                $"a motif that reaches at most {Guard.Text(Math.Min(below, above))} mm up and down",
                "wider members",
            ]
        );
    }
}
