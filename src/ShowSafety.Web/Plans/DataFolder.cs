namespace ShowSafety.Web.Plans;

/// <summary>The folder can't be used; the message is a sentence for the person who started the service.</summary>
internal sealed class DataFolderException : Exception
{
    /// <summary>Says nothing.</summary>
    public DataFolderException() { }

    /// <summary>Says why.</summary>
    public DataFolderException(string message)
        : base(message) { }

    /// <summary>Says why, and what was underneath.</summary>
    public DataFolderException(string message, Exception innerException)
        : base(message, innerException) { }
}

/// <summary>
/// The folder saved plans are kept in, held by one running service at a time: two that write to it would each tell
/// their user that everything is saved.
/// </summary>
internal sealed class DataFolder : IDisposable
{
    /// <summary>Name of the option and of the setting.</summary>
    public const string Option = "data";

    private const string LockName = "in-use.lock";

    private readonly FileStream held;

    private DataFolder(string path)
    {
        Path = path;
        held = Hold(path);
    }

    /// <summary>Full path.</summary>
    public string Path { get; }

    /// <summary>The folder of the platform for data of applications, unless the option names another.</summary>
    public static string PathOf(IConfiguration settings) =>
        settings[Option] is { Length: > 0 } named
            ? System.IO.Path.GetFullPath(named)
            : System.IO.Path.Combine(
                Environment.GetFolderPath(
                    Environment.SpecialFolder.LocalApplicationData,
                    Environment.SpecialFolderOption.DoNotVerify
                ),
                "ShowSafety"
            );

    /// <summary>Takes the folder, and makes it when it is not there yet.</summary>
    /// <exception cref="DataFolderException">It is in use or can't be written to.</exception>
    public static DataFolder Take(string path)
    {
        try
        {
            Directory.CreateDirectory(path);
            return new(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new DataFolderException(
                $"Plans can't be saved in the folder {path}: {problem.Message} Name another folder: --data DIR",
                problem
            );
        }
    }

    /// <summary>Gives the folder back. The lock file stays: taking it away would let in two at once.</summary>
    public void Dispose() => held.Dispose();

    private static FileStream Hold(string path)
    {
        var file = System.IO.Path.Combine(path, LockName);
        try
        {
            return new(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException problem) when (File.Exists(file))
        {
            throw new DataFolderException(
                $"ShowSafety already runs on the folder {path}. Use the one that runs, or name another folder: --data DIR",
                problem
            );
        }
    }
}
