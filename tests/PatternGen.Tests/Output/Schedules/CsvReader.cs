using System.Text;

namespace PatternGen.Tests.Output.Schedules;

/// <summary>Reads comma-separated values by the grammar of RFC 4180, and refuses what it does not allow.</summary>
internal static class CsvReader
{
    internal static List<List<string>> Read(byte[] file)
    {
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file);
        var records = new List<List<string>>();
        for (var at = 0; at < text.Length; )
            records.Add(Record(text, ref at));
        return records;
    }

    private static List<string> Record(string text, ref int at)
    {
        var fields = new List<string> { Field(text, ref at) };
        while (at < text.Length && text[at] == ',')
        {
            at++;
            fields.Add(Field(text, ref at));
        }
        text[at..(at + 2)].ShouldBe("\r\n");
        at += 2;
        return fields;
    }

    private static string Field(string text, ref int at)
    {
        var field = new StringBuilder();
        if (text[at] != '"')
        {
            while (text[at] is not (',' or '\r'))
            {
                text[at].ShouldNotBe('"');
                text[at].ShouldNotBe('\n');
                field.Append(text[at++]);
            }
            return field.ToString();
        }
        for (at++; ; at++)
        {
            if (text[at] == '"' && text[++at] != '"')
                return field.ToString();
            field.Append(text[at]);
        }
    }
}
