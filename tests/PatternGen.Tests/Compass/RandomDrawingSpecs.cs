using CsCheck;

namespace PatternGen.Tests.Compass;

/// <summary>Steps in any order, some of which are impossible.</summary>
public class RandomDrawingSpecs
{
    [Fact]
    public void Whatever_is_drawn_in_whatever_order_can_be_drawn_again_from_its_instructions()
    {
        var steps = Gen.Int[0, 1_000_000].Array[1, 15];
        // Tenths of a millimetre, in four rows: no two points are the same.
        var places = Gen.Select(Gen.Int[-1000, 1000], Gen.Int[0, 300]).Array[4];
        var (refused, drawn) = (0, 0);
        Gen.Select(places, steps)
            .Sample(
                (given, choices) =>
                {
                    var drawing = CompassDrawing.Of(pencil =>
                    {
                        var hand = new Hand(pencil, given);
                        foreach (var choice in choices)
                            try
                            {
                                hand.Do(choice);
                                Interlocked.Increment(ref drawn);
                            }
                            // What is refused must leave nothing behind.
                            catch (Exception error)
                                when (error is PatternException or ArgumentException)
                            {
                                Interlocked.Increment(ref refused);
                            }
                    });

                    drawing.ShouldRebuild();
                    drawing
                        .Instructions.Select(step => step.Number)
                        .ShouldBe(Enumerable.Range(1, drawing.Instructions.Count));
                },
                iter: 300
            );
        drawn.ShouldBeGreaterThan(refused);
        refused.ShouldBeGreaterThan(0);
    }

    /// <summary>Draws what a number tells.</summary>
    private sealed class Hand
    {
        private readonly Pencil _pencil;
        private readonly List<MarkedPoint> _points = [];
        private readonly List<DrawnCurve> _curves = [];

        internal Hand(Pencil pencil, IEnumerable<(int X, int Y)> places)
        {
            _pencil = pencil;
            _points.AddRange(
                places.Select((place, i) => pencil.Mark(place.X / 10.0, 40 * i + place.Y / 10.0))
            );
            pencil.SetRadius(30);
            _curves.Add(pencil.Circle(_points[0]));
            _curves.Add(pencil.Join(_points[1], _points[2]));
        }

        internal void Do(int choice)
        {
            var (one, other) = (Pick(_points, choice / 20), Pick(_points, choice / 300));
            var (curve, second) = (Pick(_curves, choice / 40), Pick(_curves, choice / 500));
            var near = CrossingChoice.NearestTo(one);
            switch (choice % 15)
            {
                case 0:
                    _pencil.SetRadius(10 + choice % 90);
                    break;
                case 1:
                    _pencil.SetRadius(one, other);
                    break;
                case 2:
                    _curves.Add(_pencil.Circle(one));
                    break;
                case 3:
                    _curves.Add(_pencil.ArcThrough(one, other));
                    break;
                case 4:
                    _points.AddRange(_pencil.DivideCircle(_curves[0], 2 + choice / 15 % 15));
                    break;
                case 5:
                    _points.Add(_pencil.Cut(one, curve, CrossingChoice.FarthestFrom(other)));
                    break;
                case 6:
                    _points.Add(_pencil.Cross(curve, second, near));
                    break;
                case 7:
                    Add(_pencil.Bisect(one, other));
                    break;
                case 8:
                    Add(_pencil.Perpendicular(_curves[1], one));
                    break;
                case 9:
                    _curves.AddRange(_pencil.Join([one], [other]));
                    break;
                case 10:
                    Add(_pencil.Extend(one, other, curve));
                    break;
                case 11:
                    _points.AddRange(_pencil.DivideLine(one, other, 2 + choice / 15 % 7));
                    break;
                case 12:
                    _points.Add(_pencil.CrossArcs(one, other, LineSide.Right));
                    break;
                case 13:
                    var way = CrossingChoice.LeftOf(one, other);
                    _points.Add(_pencil.Transfer(one, other, Pick(_points, choice), curve, way));
                    break;
                default:
                    _points.AddRange(
                        _pencil.DivideOnLargerCircle(
                            _curves[0],
                            3 + choice / 15 % 9,
                            _pencil.MarkOn(_curves[0], Angle.FromDegrees(choice % 360)),
                            2
                        )
                    );
                    break;
            }
        }

        private void Add(MarkedLine line)
        {
            _curves.Add(line.Line);
            _points.Add(line.Point);
        }

        private static T Pick<T>(List<T> things, int number) => things[number % things.Count];
    }
}
