using System.Globalization;
using System.Xml;

namespace PatternGen;

/// <summary>Opens the XML of a file: no document type, no entity, nothing from outside.</summary>
internal static class SvgInput
{
    internal static XmlReader Open(Stream stream, ImportLimits limits) =>
        XmlReader.Create(
            stream,
            new()
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                // To these, 0 would mean that there is no limit.
                MaxCharactersInDocument = limits.Bytes,
                MaxCharactersFromEntities = 1,
                IgnoreComments = true,
                CloseInput = false,
            }
        );

    /// <summary>What a reader of XML says, as an error of ours.</summary>
    internal static ImportException NoXml(XmlException error) =>
        new(
            "The file is no SVG, or a broken one: its XML can't be read.",
            error.LineNumber > 0
                ? string.Create(CultureInfo.InvariantCulture, $"line {error.LineNumber}")
                : null,
            [
                "a file without a document type: delete what starts with <!DOCTYPE",
                "the file written anew as plain SVG",
            ],
            error
        );
}
