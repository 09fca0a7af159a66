namespace PatternGen;

/// <summary>What a person can do about a finding. Each clears it, if its number is taken.</summary>
public enum RemedyKind
{
    /// <summary>Make the chip smaller. Value: the factor, below 1.</summary>
    Shrink,

    /// <summary>Make the chip larger. Value: the factor, above 1.</summary>
    Enlarge,

    /// <summary>Hold the knife flatter. Value: its angle to the surface in degrees, never under 40.</summary>
    HoldKnifeAt,

    /// <summary>Leave ridges that split the chip lengthwise. Value: the greatest width in mm of a part.</summary>
    Split,

    /// <summary>Take thicker wood. Value: its thickness in mm.</summary>
    ThickerStock,

    /// <summary>Take a blade that reaches deeper. Value: its reach in mm.</summary>
    LongerReach,

    /// <summary>Take a bit with a larger diameter. Value: the diameter in mm.</summary>
    LargerBit,

    /// <summary>Take a knife that follows a tighter curve. Value: its smallest curve in mm.</summary>
    NarrowerBlade,

    /// <summary>Draw the curve flatter. Value: its radius in mm.</summary>
    FlatterCurve,

    /// <summary>Draw the tip blunter. Value: its angle in degrees.</summary>
    OpenTip,

    /// <summary>Draw the two sides so that the ground between them ends less sharply. Value: the angle in degrees.</summary>
    OpenRidge,

    /// <summary>Move the second chip away from the first. Value: by how many mm.</summary>
    MoveApart,

    /// <summary>Move the second chip up to the first, so that the ridge gets sharp. Value: by how many mm.</summary>
    MoveTogether,

    /// <summary>Move the chip. Value: by how many mm.</summary>
    Move,

    /// <summary>Leave a plain centre. Value: its diameter in mm.</summary>
    PlainCentre,

    /// <summary>Let fewer tips meet. Value: how many.</summary>
    FewerTips,

    /// <summary>Lay the pattern so that the grain runs in another direction. Value: that direction in degrees, counter-clockwise from x.</summary>
    TurnGrain,
}
