namespace PatternGen;

/// <summary>What becomes of the strips beside the carved rows of a band.</summary>
public enum BandMargin
{
    /// <summary>They stay uncarved. The default.</summary>
    PlainGround,

    /// <summary>The outer rule of each is cut as a V groove.</summary>
    LineCuts,
}
