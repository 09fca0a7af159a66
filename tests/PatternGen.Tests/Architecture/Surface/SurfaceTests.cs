using System.Reflection;
using System.Runtime.CompilerServices;

namespace PatternGen.Tests.Architecture.Surface;

public class SurfaceTests
{
    private static readonly Assembly Library = typeof(Vector).Assembly;

    [Fact]
    public void Public_types_are_in_the_two_namespaces() =>
        Library
            .GetExportedTypes()
            .Where(type => type.Namespace is not ("PatternGen" or "PatternGen.Geometry"))
            .ShouldBeEmpty();

    [Fact]
    public void Public_types_never_change() =>
        Immutability.Violations(Library.GetExportedTypes()).ShouldBeEmpty();

    [Fact]
    public void Equatable_types_have_the_operator() =>
        Equality.Violations(Library.GetExportedTypes()).ShouldBeEmpty();

    [Fact]
    public void Signatures_show_no_package_but_the_svg_document() =>
        ForeignTypes.Violations(Library.GetExportedTypes()).ShouldBeEmpty();

    [Fact]
    public void No_public_name_is_taken_by_the_implicit_usings() =>
        NameClashes.WithImplicitUsings(Library.GetExportedTypes()).ShouldBeEmpty();

    [Fact]
    public void No_type_is_named_like_a_namespace() =>
        NameClashes.WithNamespaces(Library.GetTypes()).ShouldBeEmpty();

    /// <summary>
    /// A program for net8.0 is compiled as C# 12, which knows <c>params</c> for arrays only: for it, a method that takes
    /// them as another collection takes exactly one argument.
    /// </summary>
    [Fact]
    public void Lists_of_arguments_are_arrays_for_older_compilers() =>
        Library
            .GetExportedTypes()
            .SelectMany(type => type.GetMembers(Members.Declared).OfType<MethodBase>())
            .SelectMany(method => method.GetParameters())
            .Where(parameter => parameter.IsDefined(typeof(ParamCollectionAttribute)))
            .Where(parameter => ((MethodBase)parameter.Member).IsPublic)
            .Select(parameter => $"{parameter.Member.DeclaringType}.{parameter.Member.Name}")
            .ShouldBeEmpty();
}
