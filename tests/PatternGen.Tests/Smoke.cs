namespace PatternGen.Tests;

public class Smoke
{
    [Fact]
    public void Works() => new Vector(1, 2).X.ShouldBe(1);
}
