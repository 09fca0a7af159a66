namespace PatternGen.Tests.Output.Dxf;

/// <summary>
/// Finds what strict readers refuse and what machines stumble over, in the bytes of a DXF. Each rule has a seeded fault
/// in <see cref="DxfLintTests"/>.
/// </summary>
internal sealed partial class DxfLint
{
    private readonly List<string> _findings = [];
    private readonly byte[] _file;
    private readonly bool _mayShareSides;
    private readonly DxfDocument _document;

    private DxfLint(byte[] file, bool mayShareSides)
    {
        (_file, _mayShareSides) = (file, mayShareSides);
        _document = DxfDocument.Parse(file);
    }

    private bool IsR12 => _document.Version == "AC1009";

    /// <summary>Returns what is wrong; nothing for a clean file.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="mayShareSides">Whether closed contours may lie along one another, as chips that share sides do.</param>
    public static IReadOnlyList<string> Check(byte[] file, bool mayShareSides = false)
    {
        var lint = new DxfLint(file, mayShareSides);
        lint.CheckText();
        lint.CheckSections();
        lint.CheckHeader();
        lint.CheckNames();
        lint.CheckGroupOrder();
        if (!lint.IsR12)
        {
            lint.CheckTables();
            lint.CheckHandles();
            lint.CheckOwners();
            lint.CheckBlocks();
        }
        lint.CheckSpatial();
        lint.CheckShapes();
        lint.CheckEnds();
        lint.CheckRepeats();
        return lint._findings;
    }

    private void Require(bool holds, string finding)
    {
        if (!holds)
            _findings.Add(finding);
    }
}
