using System.Xml;

namespace PatternGen;

/// <summary>Opens the XML of a file: no document type, no entity, nothing from outside.</summary>
internal static class SvgInput
{
    internal static XmlReader Open(Stream stream, ImportLimits limits) =>
        XmlReader.Create(
            new SvgTagStream(stream),
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
    internal static ImportException NoXml(XmlException error)
    {
        var where = error.LineNumber > 0 ? ImportedCurves.LineName(error.LineNumber) : null;
        // The reader tells a document type from other troubles by its words only.
        return error.Message.Contains("DTD", StringComparison.Ordinal)
            ? new(
                "The file has a document type (<!DOCTYPE ...>). It can make a reader open other files, so none is read; an SVG needs none.",
                where,
                [
                    "the file without it: in a text editor, delete from <!DOCTYPE to the > before <svg",
                    "the file written anew as plain SVG",
                ],
                error
            )
            : new(
                "The file is no SVG, or a broken one: its XML can't be read.",
                where,
                ["the file written anew as plain SVG"],
                error
            );
    }
}
