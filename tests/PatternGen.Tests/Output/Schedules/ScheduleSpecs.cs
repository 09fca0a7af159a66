using System.Globalization;
using System.Text;
using System.Text.Json;
using PatternGen.Tests.Carving.Plan;

namespace PatternGen.Tests.Output.Schedules;

public class ScheduleSpecs
{
    [Fact]
    public void The_csv_of_passes_has_a_line_for_each_row()
    {
        var plan = Plans.Of(Plans.Rail).ByPasses();

        var records = CsvReader.Read(Bytes(plan.Schedule(), ScheduleFormat.Csv));

        records[0].ShouldBe(CarvingSchedule.CsvColumns);
        records.Count.ShouldBe(7);
        records.ShouldAllBe(record => record.Count == records[0].Count);
        records
            .Skip(1)
            .Select(record => record[1])
            .Distinct()
            .Order()
            .ShouldBe(["1.1-1.91", "2.1-2.91"]);
        records
            .Skip(1)
            .Sum(record => int.Parse(record[2], CultureInfo.InvariantCulture))
            .ShouldBe(546);
    }

    [Fact]
    public void The_csv_chip_by_chip_has_a_line_for_each_cut_with_its_numbers()
    {
        var plan = Plans.Of(Plans.Combined).With(Technique.StabAndSlice);

        var records = CsvReader.Read(Bytes(plan.Schedule(), ScheduleFormat.Csv));

        records.Count.ShouldBe(1 + plan.Strokes.Count);
        for (var i = 0; i < plan.Strokes.Count; i++)
        {
            var cut = plan.Strokes[i];
            Field("chips").ShouldBe(cut.Chip.Chip.Id.ToString());
            Number("start_x").ShouldBe(cut.Start.X, 1e-6);
            Number("end_y").ShouldBe(cut.End.Y, 1e-6);
            Number("deepest_x").ShouldBe(cut.Deepest.X, 1e-6);
            Number("depth").ShouldBe(cut.Depth, 1e-6);
            Number("blade_angle").ShouldBe(cut.BladeAngle.Degrees, 1e-6);
            Number("board_turn").ShouldBe(cut.BoardTurn.Degrees, 1e-6);

            string Field(string name) => records[i + 1][records[0].IndexOf(name)];
            double Number(string name) => double.Parse(Field(name), CultureInfo.InvariantCulture);
        }
    }

    [Fact]
    public void Lists_of_chips_are_quoted_in_the_csv()
    {
        var plan = Plans.Of(Plans.Wreath).ByPasses();

        var records = CsvReader.Read(Bytes(plan.Schedule(), ScheduleFormat.Csv));

        records.ShouldAllBe(record => record.Count == records[0].Count);
        records.ShouldContain(record => record[1].Contains(", ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_json_holds_the_documented_members_and_no_others()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined))
        {
            using var json = JsonDocument.Parse(Bytes(plan.Schedule(), ScheduleFormat.Json));
            var root = json.RootElement;

            Members(root)
                .ShouldBe(
                    "format version title order technique hand knife stock totals cautions chips steps"
                );
            Members(root.GetProperty("knife")).ShouldBe("angle");
            Members(root.GetProperty("stock")).ShouldBe("thickness grain species");
            Members(root.GetProperty("totals"))
                .ShouldBe(
                    "chips small medium large cuts lightCuts length volume deepest lineCuts lineCutLength lineCutVolume boardTurns boardTurnsSaved minutes"
                );
            foreach (var chip in root.GetProperty("chips").EnumerateArray())
                Members(chip).ShouldBe("number id size width depth volume reason");
            foreach (var step in root.GetProperty("steps").EnumerateArray())
            {
                Members(step).ShouldBe("step reason turnsBoard cuts");
                foreach (var cut in step.GetProperty("cuts").EnumerateArray())
                    Members(cut)
                        .ShouldBe(
                            "chip kind side hole facing boardTurn start end direction deepest depth deepestAlong startDepth endDepth length bladeAngle pressure grain reason"
                        );
            }
        }

        static string Members(JsonElement element) =>
            string.Join(' ', element.EnumerateObject().Select(member => member.Name));
    }

    [Fact]
    public void The_json_adds_up_to_its_totals()
    {
        var plan = Plans.Of(Plans.Combined).ByPasses();
        var rate = CarvingRate.Strokes(4);

        using var json = JsonDocument.Parse(
            Bytes(plan.Schedule().WithRate(rate), ScheduleFormat.Json)
        );
        var root = json.RootElement;
        var totals = root.GetProperty("totals");
        var chips = root.GetProperty("chips").EnumerateArray().ToArray();
        var steps = root.GetProperty("steps").EnumerateArray().ToArray();
        var cuts = steps.SelectMany(step => step.GetProperty("cuts").EnumerateArray()).ToArray();

        root.GetProperty("order").GetString().ShouldBe("by-passes");
        totals.GetProperty("chips").GetInt32().ShouldBe(chips.Length);
        totals.GetProperty("cuts").GetInt32().ShouldBe(cuts.Length);
        Number(totals, "length").ShouldBe(cuts.Sum(cut => Number(cut, "length")), 1e-3);
        Number(totals, "volume").ShouldBe(chips.Sum(chip => Number(chip, "volume")), 1e-3);
        Number(totals, "minutes").ShouldBe(cuts.Length / 4.0, 1e-6);
        totals
            .GetProperty("boardTurns")
            .GetInt32()
            .ShouldBe(steps.Count(step => step.GetProperty("turnsBoard").GetBoolean()));
        root.GetProperty("cautions").GetArrayLength().ShouldBePositive();

        static double Number(JsonElement element, string name) =>
            element.GetProperty(name).GetDouble();
    }

    [Fact]
    public void The_markdown_of_182_equal_chips_fits_a_page()
    {
        var text = Text(Plans.Of(Plans.Rail).ByPasses().Schedule());

        text.Split('\n').Length.ShouldBeLessThan(40);
        text.ShouldContain("540 fewer than chip by chip");
        text.ShouldContain("Keep the knife sharp");
        text.ShouldContain("| 1-91 | 1.1-1.91 | 91 |");
        text.ShouldNotContain("instead");
    }

    /// <summary>
    /// A square of side 20 in 12 mm of wood: at 65 degrees it would be 10 tan 65° = 21 mm deep and go through. Held flatter for
    /// wide chips, the knife is at 40 degrees, the least, and the carver has to be told.
    /// A square of side 6: atan(4 / 3) = 53.13 degrees.
    /// </summary>
    [Fact]
    public void The_angle_of_the_knife_is_said_where_it_is_not_the_usual_one()
    {
        var pattern = Pattern.OfChips(
            Plans.Square(0, 0, 20),
            Plans.Square(30, 0, 6),
            Plans.Square(40, 0, 2)
        );
        var plan = pattern.Plan(Knife.Held(65).NoDeeperThan(4), Plans.Board);

        foreach (var ordered in (CarvingPlan[])[plan.ByChip(), plan.ByPasses()])
        {
            var text = Text(ordered.Schedule());

            text.ShouldContain("2 chips with the knife at 40° to 53.1° instead");
            foreach (var angle in (string[])["| 40° |", "| 53.1° |", "| 65° |"])
                text.ShouldContain(angle);
            var sheet = new MemoryStream();
            ordered.Sheet().Save(sheet);
            Encoding.UTF8.GetString(sheet.ToArray()).ShouldContain("40° to 53.1° instead");
        }
    }

    /// <summary>A pyramid is a third of its prism: side 6 and 3 tan 65° deep, 36 · 6.4335 / 3 = 77.2 mm³.</summary>
    [Fact]
    public void The_table_shows_the_wood_by_which_chips_are_ordered()
    {
        var plan = Pattern
            .OfChips(Plans.Square(0, 0, 3), Plans.Square(30, 0, 6))
            .Plan(Knife.Held(65), Plans.Board);

        var rows = Text(plan.Schedule())
            .Split('\n')
            .Where(line => line.StartsWith("| 1 |") || line.StartsWith("| 2 |"))
            .ToArray();

        rows[0].ShouldStartWith("| 1 | 1.2 | 77 mm³ | 6 mm | 6.43 mm | 65° |");
        // Half the side: an eighth of the wood.
        rows[1].ShouldStartWith("| 2 | 1.1 | 9.7 mm³ | 3 mm | 3.22 mm | 65° |");
    }

    /// <summary>The rows of a table in Markdown have as many cells as its head: GitHub Flavored Markdown, 4.10.</summary>
    [Fact]
    public void The_tables_of_the_markdown_are_whole_whatever_the_name_is()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined.Named("Lid | *best* <b>")))
        {
            var text = Text(plan.Schedule());

            text.ShouldContain(@"Lid \| \*best\* \<b\>");
            var rows = text.Split('\n').Where(line => line.StartsWith('|')).ToArray();
            rows.Length.ShouldBe(2 + plan.Steps.Count);
            rows.Select(row => row.Count(letter => letter == '|')).Distinct().Count().ShouldBe(1);
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_culture_changes_nothing(string culture)
    {
        var expected = All();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            All().ShouldBe(expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static byte[][] All()
        {
            var plan = Plans.Of(Plans.Combined).ByPasses();
            var schedule = plan.Schedule().WithRate(CarvingRate.Strokes(7));
            var sheet = new MemoryStream();
            plan.Sheet().Save(sheet);
            return
            [
                .. Enum.GetValues<ScheduleFormat>().Select(format => Bytes(schedule, format)),
                sheet.ToArray(),
            ];
        }
    }

    [Fact]
    public void One_plan_read_on_many_threads_is_one_plan()
    {
        var expected = Bytes(Plans.Of(Plans.Wreath).ByPasses().Schedule(), ScheduleFormat.Json);
        var shared = Plans.Of(Plans.Wreath).ByPasses();
        Parallel.For(0, 8, _ => Bytes(shared.Schedule(), ScheduleFormat.Json).ShouldBe(expected));
    }

    [Fact]
    public void A_pattern_without_chips_has_a_schedule_that_says_so()
    {
        var plan = Plans.Of(Pattern.Empty);

        Text(plan.Schedule()).ShouldContain("There are no chips to carve.");
        CsvReader.Read(Bytes(plan.Schedule(), ScheduleFormat.Csv)).Count.ShouldBe(1);
        using var json = JsonDocument.Parse(Bytes(plan.Schedule(), ScheduleFormat.Json));
        json.RootElement.GetProperty("steps").GetArrayLength().ShouldBe(0);
    }

    [Fact]
    public void The_extension_chooses_the_format_and_another_one_is_refused()
    {
        using var folder = new TemporaryFolder();
        var schedule = Plans.Of(Plans.Petals).Schedule();

        foreach (var name in (string[])["order.md", "order.CSV", "order.json"])
            schedule.Save(folder.File(name));

        folder.Names.ShouldBe(["order.CSV", "order.json", "order.md"], ignoreOrder: true);
        Should
            .Throw<ArgumentException>(() => schedule.Save(folder.File("order.txt")))
            .Message.ShouldContain(".md, .csv and .json");
    }

    [Fact]
    public void Another_wording_speaks_in_the_markdown()
    {
        var text = Text(Plans.Of(Plans.Petals).Schedule(new Shouting()));

        text.ShouldContain("NO LARGER CHIP IS LEFT", Case.Sensitive);
        text.ShouldNotContain("no larger chip is left", Case.Sensitive);
    }

    private sealed class Shouting : Wording
    {
        public override string Reason(PlanReason reason) => base.Reason(reason).ToUpperInvariant();
    }

    private static string Text(CarvingSchedule schedule) =>
        Encoding.UTF8.GetString(Bytes(schedule, ScheduleFormat.Markdown));

    private static byte[] Bytes(CarvingSchedule schedule, ScheduleFormat format)
    {
        var stream = new MemoryStream();
        schedule.Save(stream, format);
        return stream.ToArray();
    }
}
