using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace PatternGen.Tests.Architecture.Rooms;

/// <summary>
/// Says in which rooms the source of a type stands. The compiler's debug symbols name the source file of every
/// type, so nothing is parsed or guessed, and a type split over files counts in each of their rooms.
/// </summary>
internal sealed class RoomMap
{
    // Where the symbols name the files of types that have no code: enums, interfaces, delegates.
    private static readonly Guid TypeDocuments = new("932E74BC-DBA9-4478-8D46-0F32A7BAB3D3");

    private readonly Dictionary<int, SortedSet<string>> _rooms = [];
    private readonly MetadataReader _metadata;
    private readonly MetadataReader _symbols;
    private readonly string _sourceFolder;

    private RoomMap(MetadataReader metadata, MetadataReader symbols, string sourceFolder)
    {
        (_metadata, _symbols, _sourceFolder) = (metadata, symbols, sourceFolder);
        foreach (var handle in symbols.MethodDebugInformation)
            AddMethod(handle);
        foreach (var handle in symbols.CustomDebugInformation)
            AddTypeDocuments(symbols.GetCustomDebugInformation(handle));
    }

    /// <param name="assemblyPath">The assembly; its symbols lie beside it.</param>
    /// <param name="sourceFolder">The folder that holds the rooms, as "/src/PatternGen/".</param>
    public static RoomMap Read(string assemblyPath, string sourceFolder)
    {
        using var assembly = new PEReader(File.OpenRead(assemblyPath));
        using var symbols = MetadataReaderProvider.FromPortablePdbStream(
            File.OpenRead(Path.ChangeExtension(assemblyPath, ".pdb"))
        );
        return new RoomMap(assembly.GetMetadataReader(), symbols.GetMetadataReader(), sourceFolder);
    }

    /// <summary>The rooms of an outermost type, by its metadata token; nested types count for the outermost.</summary>
    public IReadOnlyCollection<string> RoomsOf(int typeToken) =>
        _rooms.TryGetValue(typeToken, out var rooms) ? rooms : [];

    private void AddMethod(MethodDebugInformationHandle handle)
    {
        var method = _metadata.GetMethodDefinition(handle.ToDefinitionHandle());
        foreach (var point in _symbols.GetMethodDebugInformation(handle).GetSequencePoints())
            Add(method.GetDeclaringType(), point.Document);
    }

    private void AddTypeDocuments(CustomDebugInformation information)
    {
        if (_symbols.GetGuid(information.Kind) != TypeDocuments)
            return;

        var documents = _symbols.GetBlobReader(information.Value);
        while (documents.RemainingBytes > 0)
        {
            var document = MetadataTokens.DocumentHandle(documents.ReadCompressedInteger());
            Add((TypeDefinitionHandle)information.Parent, document);
        }
    }

    private void Add(TypeDefinitionHandle type, DocumentHandle document)
    {
        if (RoomOf(document) is not { } room)
            return;

        var token = MetadataTokens.GetToken(Outermost(type));
        if (!_rooms.TryGetValue(token, out var rooms))
            _rooms[token] = rooms = [];
        rooms.Add(room);
    }

    private TypeDefinitionHandle Outermost(TypeDefinitionHandle type)
    {
        var outer = _metadata.GetTypeDefinition(type).GetDeclaringType();
        return outer.IsNil ? type : Outermost(outer);
    }

    private string? RoomOf(DocumentHandle document)
    {
        var name = _symbols.GetString(_symbols.GetDocument(document).Name).Replace('\\', '/');
        var start = name.LastIndexOf(_sourceFolder, StringComparison.Ordinal);
        if (start < 0)
            return null;

        var folders = name[(start + _sourceFolder.Length)..].Split('/');
        // Generated files lie in obj; a file beside the rooms stands in none of them.
        return folders switch
        {
            ["obj", ..] or [_] => null,
            _ => folders[0],
        };
    }
}
