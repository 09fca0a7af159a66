using System.Reflection;
using System.Runtime.Versioning;

namespace PatternGen.Net8;

public class Net8Assembly
{
    [Fact]
    public void The_net8_assembly_is_the_one_that_runs()
    {
        var library = typeof(Vector).Assembly;
        var target = library.GetCustomAttribute<TargetFrameworkAttribute>();

        target.ShouldNotBeNull().FrameworkName.ShouldBe(".NETCoreApp,Version=v8.0");
    }

    [Fact]
    public void A_vector_keeps_its_parts()
    {
        var vector = new Vector(3, 4);

        (vector.X, vector.Y).ShouldBe((3, 4));
    }
}
