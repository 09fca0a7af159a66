namespace PatternGen.Tests.Carving;

/// <summary>Changes of a whole pattern that an inspection suggests.</summary>
public class SuggestionSpecs
{
    private static readonly Knife Blade = Knife.Held();

    [Fact]
    public void A_pattern_that_is_too_deep_is_to_be_drawn_smaller()
    {
        var pattern = Pattern.OfChips(Inspections.Lens(6), Inspections.Lens(5).Moved(0, 10));
        var suggestion = pattern
            .Inspect(Blade, Inspections.Board)
            .Suggestions.ShouldHaveSingleItem();

        // 4 / tan 65° is 1.8652 of 3.
        suggestion.Kind.ShouldBe(SuggestionKind.SmallerScale);
        suggestion.Value.ShouldBe(0.621);
        suggestion.Text.ShouldBe("draw the whole pattern at 62.1 %: no chip is too deep then");
        pattern.Scaled(suggestion.Value).Inspect(Blade, Inspections.Board).ShouldBeClear();
        pattern
            .Scaled(suggestion.Value + 0.001)
            .Inspect(Blade, Inspections.Board)
            .Findings.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_smaller_pattern_is_not_suggested_where_it_gets_too_fine()
    {
        // At 62.1 % the other chip would be 1.86 mm wide, and a ridge of 0.9 mm 0.56.
        Pattern
            .OfChips(Inspections.Lens(6), Inspections.Lens(3).Moved(0, 10))
            .Inspect(Blade, Inspections.Board)
            .Suggestions.ShouldBeEmpty();
        Pattern
            .OfChips(Inspections.Lens(6), Inspections.Lens(6).Moved(0, 6.9))
            .Inspect(Blade, Inspections.Board)
            .Suggestions.ShouldBeEmpty();
    }

    [Fact]
    public void A_border_that_is_too_deep_is_to_be_fitted_with_a_smaller_pitch()
    {
        var border = Rail.Of(418, 40).Border(TriangleBand.Ruled(2, 5, 2), 8).EndMargins(6);
        var suggestion = border
            .Inspect(Blade, Inspections.Board)
            .Suggestions.Single(one => one.Kind == SuggestionKind.SmallerPitch);

        var fitted = border.Fitted(fit => fit.Pitch(suggestion.Value));
        fitted.Fit.Pitch.ShouldBe(suggestion.Value, 1e-9);
        fitted.Inspect(Blade, Inspections.Board).ShouldBeClear();
        // One repeat less is too deep.
        var fewer = fitted.Fit.Pitch * fitted.Fit.Repeats / (fitted.Fit.Repeats - 1);
        border
            .Fitted(fit => fit.Pitch(fewer))
            .Inspect(Blade, Inspections.Board)
            .Of(FindingKind.OverComfortableDepth)
            .ShouldNotBeEmpty();
    }

    [Fact]
    public void Chips_with_thin_ridges_between_them_are_to_stand_farther_apart()
    {
        var upright = Inspections.Board.GrainAlong(90);
        var suggestion = Bars(3.7).Inspect(Blade, upright).Suggestions.ShouldHaveSingleItem();

        // 3.8 instead of 3.7.
        suggestion.Kind.ShouldBe(SuggestionKind.LargerGaps);
        suggestion.Value.ShouldBe(1.028);
        Bars(3.7 * suggestion.Value).Inspect(Blade, upright).ShouldBeClear();
    }

    [Fact]
    public void Chips_that_share_sides_are_not_to_be_taken_apart()
    {
        var pairs = Pattern.OfChips(Inspections.Bar(), Inspections.Bar(3)).Repeated(5, 6.7);

        pairs.Inspect(Blade, Inspections.Board.GrainAlong(90)).Suggestions.ShouldBeEmpty();
    }

    [Fact]
    public void Without_findings_there_is_nothing_to_suggest() =>
        Bars(5).Inspect(Blade, Inspections.Board).Suggestions.ShouldBeEmpty();

    private static Pattern Bars(double pitch) =>
        Pattern.OfChips(Inspections.Bar()).Repeated(6, pitch);
}
