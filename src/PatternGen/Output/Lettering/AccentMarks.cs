namespace PatternGen;

/// <summary>Where a mark stands on its letter.</summary>
internal enum MarkPlace
{
    /// <summary>Over the letter's axis.</summary>
    Above,

    /// <summary>Under the letter's axis.</summary>
    Below,

    /// <summary>Hung from the letter's right foot.</summary>
    Foot,

    /// <summary>To the right of the letter's top.</summary>
    Beside,
}

/// <summary>A mark, and the letters that carry it.</summary>
/// <param name="Combining">The character that adds the mark to the letter before it.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Strokes">
/// Its strokes as in <see cref="StrokeNotation"/>, with the origin on the letter: its top, baseline, right foot or
/// right top.
/// </param>
/// <param name="Letters">Pairs of a letter with the mark and that letter without.</param>
internal sealed record AccentMark(char Combining, MarkPlace Place, string Strokes, string Letters);

/// <summary>The marks of Latin letters.</summary>
internal static class AccentMarks
{
    private const string Comma = "3,-13 -3,-29";

    internal static readonly AccentMark[] All =
    [
        // Grave.
        new('\u0300', MarkPlace.Above, "5,16 -8,33", "ÀA ÈE ÌI ÒO ÙU àa èe ìı òo ùu"),
        // Acute.
        new(
            '\u0301',
            MarkPlace.Above,
            "-5,16 8,33",
            "ÁA ÉE ÍI ÓO ÚU ÝY áa ée íı óo úu ýy ĆC ćc ĹL ĺl ŃN ńn ŔR ŕr ŚS śs ŹZ źz"
        ),
        // Circumflex.
        new(
            '\u0302',
            MarkPlace.Above,
            "-14,16 0,31 14,16",
            "ÂA ÊE ÎI ÔO ÛU âa êe îı ôo ûu ĈC ĉc ĜG ĝg ĤH ĥh ĴJ ĵȷ ŜS ŝs ŴW ŵw ŶY ŷy"
        ),
        // Tilde.
        new(
            '\u0303',
            MarkPlace.Above,
            "-17,18 ~ -8,26e ~ 8,18e ~ 17,26",
            "ÃA ÑN ÕO ãa ñn õo ĨI ĩı ŨU ũu"
        ),
        // Macron.
        new('\u0304', MarkPlace.Above, "-15,20 15,20", "ĀA āa ĒE ēe ĪI īı ŌO ōo ŪU ūu"),
        // Breve.
        new(
            '\u0306',
            MarkPlace.Above,
            "-13,30 ~ 0,18e ~ 13,30",
            "ĂA ăa ĔE ĕe ĞG ğg ĬI ĭı ŎO ŏo ŬU ŭu"
        ),
        // Dot.
        new('\u0307', MarkPlace.Above, "0,24", "ĊC ċc ĖE ėe ĠG ġg İI ŻZ żz"),
        // Diaeresis.
        new('\u0308', MarkPlace.Above, "-12,24 | 12,24", "ÄA ËE ÏI ÖO ÜU ŸY äa ëe ïı öo üu ÿy"),
        // Ring.
        new('\u030A', MarkPlace.Above, "-8,24n ~ 8,24s ~ -8,24n", "ÅA åa ŮU ůu"),
        // Double acute.
        new('\u030B', MarkPlace.Above, "-14,16 -4,33 | 5,16 15,33", "ŐO őo ŰU űu"),
        // Caron.
        new(
            '\u030C',
            MarkPlace.Above,
            "-14,31 0,16 14,31",
            "ČC čc ĎD ĚE ěe ŇN ňn ŘR řr ŠS šs ŤT ŽZ žz"
        ),
        // Caron of letters too tall to carry it: an apostrophe.
        new('\u030C', MarkPlace.Beside, "15,0 10,-22", "ďd ľl ťt"),
        // As before, over the foot of the letter.
        new('\u030C', MarkPlace.Above, "17,0 12,-22", "ĽL"),
        // Comma.
        new('\u0326', MarkPlace.Below, Comma, "ȘS șs ȚT țt"),
        // Cedilla.
        new(
            '\u0327',
            MarkPlace.Below,
            "0,0 -3,-11@10 ~ 9,-20s ~ -1,-29w ~ -9,-27",
            "ÇC çc ŞS şs ŢT ţt"
        ),
        // Cedilla that is drawn as a comma.
        new('\u0327', MarkPlace.Below, Comma, "ĢG ĶK ķk ĻL ļl ŅN ņn ŖR ŗr"),
        // As before, turned over for a letter with a tail.
        new('\u0327', MarkPlace.Above, "4,33 -2,16", "ģg"),
        // Ogonek.
        new(
            '\u0328',
            MarkPlace.Foot,
            "-4,0 ~ -13,-17s ~ -4,-28e ~ 3,-26",
            "ĄA ąa ĘE ęe ĮI įi ŲU ųu"
        ),
    ];
}
