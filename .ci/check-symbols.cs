#:property PublishAot=false
// Whether the symbols that ship bring the sources along.
//   dotnet run .ci/check-symbols.cs -- LIBRARY.dll LIBRARY.pdb src/PROJECT
// LIBRARY.pdb has to be that of LIBRARY.dll, and every document it names has to be embedded: a debugger then needs neither
// a repository nor a network. Each document that the project keeps in the repository has to hold what the file holds, and each
// such file has to be there; what is left was written by the build. Exit code 0 if all is well, 1 if not.
using System.IO.Compression;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

const string Root = "/_/"; // what src/Directory.Build.props makes of the root of the repository
var embeddedSource = new Guid("0E8A571B-6926-466E-B4AD-8AB04611F5FE"); // its kind in the specification of portable PDB files

if (args is not [string library, string symbols, string project] || !Directory.Exists(project))
{
    Console.Error.WriteLine("error: a library, its symbols and the folder of its project are what can be checked.");
    return 1;
}

using var image = new PEReader(File.OpenRead(library));
using MetadataReaderProvider provider = MetadataReaderProvider.FromPortablePdbStream(File.OpenRead(symbols));
MetadataReader reader = provider.GetMetadataReader();
var faults = new List<string>();
DebugDirectoryEntry codeView = image.ReadDebugDirectory().Single(e => e.Type == DebugDirectoryEntryType.CodeView);
if (image.ReadCodeViewDebugDirectoryData(codeView).Guid != new BlobContentId(reader.DebugMetadataHeader!.Id).Guid)
    faults.Add($"{symbols} are not the symbols of {library}");

HashSet<string> kept = Directory.EnumerateFiles(project, "*.cs", SearchOption.AllDirectories)
    .Select(f => f.Replace('\\', '/'))
    .Where(f => !f.StartsWith($"{project}/bin/", StringComparison.Ordinal) && !f.StartsWith($"{project}/obj/", StringComparison.Ordinal))
    .ToHashSet(StringComparer.Ordinal);
int alike = 0, built = 0;
foreach (DocumentHandle handle in reader.Documents)
{
    string name = reader.GetString(reader.GetDocument(handle).Name);
    string path = name.StartsWith(Root, StringComparison.Ordinal) ? name[Root.Length..] : name;
    if (Source(handle) is not { } source)
        faults.Add($"{name} is named and not embedded");
    else if (!kept.Remove(path))
        built++;
    else if (source.AsSpan().SequenceEqual(File.ReadAllBytes(path)))
        alike++;
    else
        faults.Add($"{name} differs from the file of the repository");
}

faults.AddRange(kept.Order(StringComparer.Ordinal).Select(f => $"{f} is not in the symbols"));
Console.WriteLine($"{symbols}: {alike} sources as in {project}, {built} written by the build");
faults.ForEach(Console.WriteLine);
return faults.Count == 0 && alike > 0 ? 0 : 1;

// The bytes of a document: its length when it is packed, 0 when it is not, and then the bytes.
byte[]? Source(DocumentHandle document)
{
    foreach (CustomDebugInformation information in reader.GetCustomDebugInformation(document).Select(reader.GetCustomDebugInformation))
    {
        if (reader.GetGuid(information.Kind) != embeddedSource)
            continue;
        byte[] blob = reader.GetBlobBytes(information.Value);
        int length = BitConverter.ToInt32(blob);
        var packed = new MemoryStream(blob, sizeof(int), blob.Length - sizeof(int));
        if (length == 0)
            return packed.ToArray();
        var plain = new MemoryStream(length);
        using var unpacked = new DeflateStream(packed, CompressionMode.Decompress);
        unpacked.CopyTo(plain);
        return plain.ToArray();
    }

    return null;
}
