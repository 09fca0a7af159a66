namespace PatternGen;

/// <summary>Group codes that mean the same in all entities: what the value of a group is.</summary>
internal static class DxfCode
{
    /// <summary>The type of what begins: an entity, a table, a section.</summary>
    internal const int Start = 0;

    /// <summary>A name: of a section, a table entry, a block.</summary>
    internal const int Name = 2;

    internal const int Layer = 8;

    /// <summary>A variable of the header.</summary>
    internal const int Variable = 9;

    /// <summary>First coordinate of a place; y has ten more and z twenty.</summary>
    internal const int Place = 10;

    /// <summary>First coordinate of a second place.</summary>
    internal const int SecondPlace = 11;

    internal const int Flags = 70;

    /// <summary>Here begins what newer programs hang on to an entity, with codes of its own.</summary>
    internal const int EmbeddedObject = 101;

    /// <summary>First coordinate of the direction that the plane of an entity faces.</summary>
    internal const int Facing = 210;

    internal const int Comment = 999;
}
