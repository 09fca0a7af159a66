namespace PatternGen;

internal sealed partial class R2000File
{
    // Handles of what every file holds. Unique, not 0; all others count on from FirstEntity.
    private const string ViewportTable = "1";
    private const string LineTypeTable = "2";
    private const string LayerTable = "3";
    private const string StyleTable = "4";
    private const string ViewTable = "5";
    private const string UcsTable = "6";
    private const string ApplicationTable = "7";
    private const string DimensionTable = "8";
    private const string BlockTable = "9";

    private const string RootDictionary = "A";
    private const string GroupDictionary = "B";
    private const string LayoutDictionary = "C";
    private const string PlotStyleDictionary = "D";
    private const string PlotStyle = "E";
    private const string ModelLayout = "F";
    private const string PaperLayout = "10";

    private const string ModelRecord = "11";
    private const string ModelBlock = "12";
    private const string ModelBlockEnd = "13";
    private const string PaperRecord = "14";
    private const string PaperBlock = "15";
    private const string PaperBlockEnd = "16";

    private const string ActiveViewport = "17";
    private const string ByBlockLineType = "18";
    private const string ByLayerLineType = "19";
    private const string ContinuousLineType = "1A";
    private const string TextStyle = "1B";
    private const string Application = "1C";
    private const string DimensionStyle = "1D";
    private const string LayerZero = "1E";

    /// <summary>The layers follow one another in their order.</summary>
    private const int FirstLayer = 0x20;

    /// <summary>Those of the blocks come first, then those of the drawing.</summary>
    private const int FirstEntity = 0x30;

    /// <summary>Those of a block besides its entities: its record, its begin and its end.</summary>
    private const int HandlesPerBlock = 3;
}
