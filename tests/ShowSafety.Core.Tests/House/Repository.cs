namespace ShowSafety.Core.Tests.House;

/// <summary>Finds the files of the repository from wherever the tests run.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "ShowSafety.sln"))
            ? folder.FullName
            : Find(folder.Parent ?? throw new InvalidOperationException("The tests do not run inside the repository."));
}
