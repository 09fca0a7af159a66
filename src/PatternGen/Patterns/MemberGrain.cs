using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The length of the member that a chip lies on, from which its grain is measured, as far as it is placed by now.</summary>
/// <remarks>The default value is a chip on no member: its length is the x axis of the whole, however it is placed.</remarks>
internal readonly record struct MemberGrain
{
    private readonly Kind _kind;
    private readonly Vector _direction;

    private MemberGrain(Kind kind, Vector direction)
    {
        _kind = kind;
        _direction = direction;
    }

    private enum Kind
    {
        /// <summary>On no member.</summary>
        None,

        /// <summary>The direction is the member's length.</summary>
        Length,

        /// <summary>The direction is the grain itself, whatever the stock says.</summary>
        Own,
    }

    /// <summary>A member that is as long as its frame's x axis.</summary>
    internal static MemberGrain AlongX { get; } = new(Kind.Length, new(1, 0));

    /// <summary>A member with a grain of its own, in its own frame.</summary>
    internal static MemberGrain Own(Angle direction) => new(Kind.Own, Vector.Towards(direction));

    /// <summary>
    /// Returns what holds of a chip of this grain in a member: the innermost member is the one it lies on, and the
    /// outermost grain of its own was said last.
    /// </summary>
    internal MemberGrain In(MemberGrain member) =>
        member._kind == Kind.Own || _kind == Kind.None ? member : this;

    internal MemberGrain Placed(Transform placement) =>
        _kind == Kind.None ? this : new(_kind, placement.Apply(_direction));

    /// <summary>The direction of the grain, of length 1, from the first end of the piece to the last.</summary>
    internal Vector On(Stock stock) =>
        _kind switch
        {
            Kind.None => Vector.Towards(stock.Grain),
            Kind.Length => Transform.Rotate(stock.Grain).Apply(_direction).Unit(),
            _ => _direction.Unit(),
        };
}
