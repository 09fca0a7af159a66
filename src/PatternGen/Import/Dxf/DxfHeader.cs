namespace PatternGen;

/// <summary>What the header of a file says of the unit; a file may have none.</summary>
internal sealed class DxfHeader
{
    /// <summary>$INSUNITS, the unit as a number of the format's table.</summary>
    internal int? Unit { get; private set; }

    /// <summary>The line of the unit.</summary>
    internal int UnitLine { get; private set; }

    /// <summary>Whether $MEASUREMENT says that the drawing is in feet and inches.</summary>
    internal bool IsInInches { get; private set; }

    /// <summary>Reads up to the group that ends the section.</summary>
    internal void Read(DxfGroupReader groups)
    {
        var variable = "";
        while (groups.Code != DxfCode.Start)
        {
            if (groups.Code == DxfCode.Variable)
                variable = DxfText.Shown(groups.Value);
            else if (groups.Code == DxfCode.Flags && variable == "$INSUNITS")
                (Unit, UnitLine) = (groups.Whole(), groups.Line);
            else if (groups.Code == DxfCode.Flags && variable == "$MEASUREMENT")
                IsInInches = groups.Whole() == 0;
            groups.Require("the section HEADER");
        }
    }
}
