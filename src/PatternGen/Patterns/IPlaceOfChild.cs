namespace PatternGen;

/// <summary>A place where one of several motifs stands.</summary>
internal interface IPlaceOfChild
{
    /// <summary>The motif's number, from 0.</summary>
    int Child { get; }
}
