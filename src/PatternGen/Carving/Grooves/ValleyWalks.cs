using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the walks that pass every valley of a chip once: as few as there can be, and each from a tip if there is one left.</summary>
/// <remarks>
/// Every walk begins and ends at a node where an odd number of valleys meet, or goes round, so that half the number of such nodes is the
/// least number of walks (Euler). A triangle takes two: from tip to tip, and from the third tip to the middle.
/// </remarks>
internal sealed class ValleyWalks
{
    /// <summary>Decimals of mm and radians to which places and turns are compared, so that rounding does not choose between equals.</summary>
    private const int Decimals = 6;

    private readonly Roof _roof;
    private readonly List<Valley> _left;
    private readonly List<List<ValleyStep>> _walks = [];

    private ValleyWalks(Roof roof)
    {
        _roof = roof;
        _left = [.. roof.Valleys];
    }

    internal static IReadOnlyList<IReadOnlyList<ValleyStep>> Of(Roof roof)
    {
        var walks = new ValleyWalks(roof);
        while (walks._left.Count > 0)
            walks.AddWalk();
        return walks._walks;
    }

    private void AddWalk()
    {
        var start = Start();
        var walk = Walk(start);
        // A round that touches a walk becomes part of it.
        if (!IsTip(start) && walk[^1].To == start && Insert(walk, start))
            return;
        _walks.Add(walk);
    }

    /// <summary>
    /// Tips first, the one nearest to where the bit is; then where walks have to begin; then anywhere, rather where a walk comes by, or where it is
    /// least deep.
    /// </summary>
    private RoofNode Start()
    {
        var nodes = _left.SelectMany(valley => new[] { valley.Start, valley.End }).Distinct();
        return nodes
            .OrderBy(Rank)
            .ThenBy(Distance)
            .ThenBy(node => Math.Round(node.Place.X, Decimals))
            .ThenBy(node => Math.Round(node.Place.Y, Decimals))
            .First();

        int Rank(RoofNode node) =>
            (IsOdd(node), IsTip(node), IsPassed(node)) switch
            {
                (true, true, _) => 0,
                (true, _, _) => 1,
                (_, true, _) => 2,
                (_, _, true) => 3,
                _ => 4,
            };

        double Distance(RoofNode node)
        {
            if (_walks.Count > 0 && IsTip(node))
                return Math.Round(node.Place.DistanceTo(_walks[^1][^1].To.Place), Decimals);
            return IsTip(node) ? 0 : Math.Round(node.Clearance, Decimals);
        }
    }

    private List<ValleyStep> Walk(RoofNode start)
    {
        var walk = new List<ValleyStep>();
        var at = start;
        Vector? heading = null;
        while (Choices(at) is { Count: > 0 } choices)
        {
            var step = choices
                .OrderBy(choice => choices.Count > 1 && Strands(choice) ? 1 : 0)
                .ThenBy(choice => heading is { } ahead ? Turn(ahead, Leaving(choice)) : 0)
                .First();
            _left.Remove(step.Valley);
            walk.Add(step);
            at = step.To;
            heading = -Leaving(new(step.Valley, !step.IsBackwards));
        }
        return walk;
    }

    private List<ValleyStep> Choices(RoofNode at) =>
        [
            .. _left
                .Where(valley => valley.Start == at || valley.End == at)
                .Select(valley => new ValleyStep(valley, valley.Start != at)),
        ];

    /// <summary>Whether a step would leave valleys behind that have to be begun elsewhere than in a tip.</summary>
    private bool Strands(ValleyStep step)
    {
        var rest = _left.Where(valley => valley != step.Valley).ToList();
        var reached = new HashSet<RoofNode> { step.From };
        while (rest.Any(Grows)) { }
        var odd = reached.Where(node => Degree(rest, node) % 2 == 1).ToList();
        return odd.Count > 0 && !odd.Any(IsTip);

        bool Grows(Valley valley) =>
            reached.Contains(valley.Start) != reached.Contains(valley.End)
            && (reached.Add(valley.Start) | reached.Add(valley.End));
    }

    private bool Insert(List<ValleyStep> round, RoofNode node)
    {
        foreach (var walk in _walks)
            for (var i = 0; i < walk.Count; i++)
                if (walk[i].To == node)
                {
                    walk.InsertRange(i + 1, round);
                    return true;
                }
        return false;
    }

    private bool IsTip(RoofNode node) => ValleyTracer.IsTip(_roof, node);

    private bool IsOdd(RoofNode node) => Degree(_left, node) % 2 == 1;

    private bool IsPassed(RoofNode node) =>
        _walks.Exists(walk => walk.Exists(step => step.To == node || step.From == node));

    private static int Degree(List<Valley> valleys, RoofNode node) =>
        valleys.Count(valley => valley.Start == node) + valleys.Count(valley => valley.End == node);

    private static double Turn(Vector before, Vector after) =>
        Math.Round(Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))), Decimals);

    /// <summary>The direction in which a step leaves, by its first hundredth.</summary>
    private static Vector Leaving(ValleyStep step) =>
        step.Valley.PlaceAt(step.IsBackwards ? 0.99 : 0.01).Point - step.From.Place;
}
