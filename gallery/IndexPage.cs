using System.Net;
using System.Text;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary>The page that shows what was made. It opens from disk and needs nothing but the files beside it.</summary>
internal static class IndexPage
{
    private const string Style = """
        :root { color-scheme: light dark; --ground: #f7f2ea; --ink: #3a2f26; --card: #fffdf9; --line: #dccfbd; --link: #7a4a1e; }
        @media (prefers-color-scheme: dark) { :root { --ground: #221d18; --ink: #eadfce; --card: #2d2620; --line: #4a3f34; --link: #e0b07a; } }
        body { margin: 0 auto; max-width: 70rem; padding: 2rem 1.25rem; background: var(--ground); color: var(--ink); font: 1.05rem/1.55 Georgia, serif; }
        h1 { font-weight: normal; margin: 0 0 .25rem; }
        h2 { font-weight: normal; margin: 2.5rem 0 1rem; border-bottom: 1px solid var(--line); }
        figure { margin: 0 0 1.25rem; padding: 1rem; background: var(--card); border: 1px solid var(--line); border-radius: .4rem; }
        figure img { display: block; max-width: 100%; margin: 0 auto; }
        figcaption { margin-top: .75rem; }
        a { color: var(--link); margin-right: .9rem; }
        .cautions { font-size: .95rem; }
        """;

    private const string Cautions = """
        Knife: keep it sharp, anchor the thumb of the knife hand, and keep the holding hand out of the blade's path; clamp the
        board or set it against a stop; a cut-resistant glove and a thumb guard help. Pupils are supervised, with a first-aid
        kit at hand. Laser: never leave it running unattended, extract the fumes, never burn PVC. Router: guards, hold-downs,
        eye and ear protection, a mask against fine dust. Depths and ridges follow common practice and are no guarantee: test
        on scrap. The machine's manual, local codes and licensed practice come first.
        """;

    internal static string Of(string folder, IEnumerable<ITopic> topics)
    {
        var page = new StringBuilder();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append("<title>Chip-carving patterns</title>\n")
            .Append($"<style>\n{Style}\n</style>\n</head>\n<body>\n")
            .Append("<h1>Chip-carving patterns</h1>\n")
            .Append(
                "<p>Drawings are true size unless they say how much larger they are: SVG to look at and to print, DXF for a machine.</p>\n"
            );
        foreach (var topic in topics)
            Append(page, folder, topic);
        return page.Append(
                $"<h2>Before you cut</h2>\n<p class=\"cautions\">{Cautions}</p>\n</body>\n</html>\n"
            )
            .ToString();
    }

    private static void Append(StringBuilder page, string folder, ITopic topic)
    {
        page.Append($"<h2>{WebUtility.HtmlEncode(topic.Title)}</h2>\n");
        foreach (var exhibit in topic.Exhibits)
        {
            string Link(string file) =>
                WebUtility.HtmlEncode(
                    Path.GetRelativePath(folder, Path.Combine(topic.Folder, file))
                        .Replace('\\', '/')
                );
            var caption = WebUtility.HtmlEncode(exhibit.Caption);
            page.Append(
                    $"<figure><img loading=\"lazy\" src=\"{Link(exhibit.Picture)}\" alt=\"{caption}\">\n"
                )
                .Append($"<figcaption>{caption}<br>\n");
            foreach (var file in exhibit.Files)
                page.Append($"<a href=\"{Link(file)}\">{WebUtility.HtmlEncode(file)}</a>\n");
            page.Append("</figcaption></figure>\n");
        }
    }
}
