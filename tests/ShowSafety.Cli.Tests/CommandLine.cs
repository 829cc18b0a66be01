using System.Diagnostics;

namespace ShowSafety.Cli.Tests;

/// <summary>Runs the command line as a user does, in a process of its own and a folder of its own.</summary>
public sealed class CommandLine : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("showsafety-cli-");

    /// <summary>The folder files are written to and read from.</summary>
    public string Folder => _folder.FullName;

    /// <summary>Where a template lies.</summary>
    public static string Template(string name) =>
        Path.Combine(AppContext.BaseDirectory, "site-templates", name + ".json");

    /// <summary>Path of a file in the folder.</summary>
    public string File(string name) => Path.Combine(Folder, name);

    /// <summary>Writes a file in the folder and gives its path.</summary>
    public string Put(string name, string content)
    {
        System.IO.File.WriteAllText(File(name), content);
        return File(name);
    }

    /// <summary>Runs the program with arguments.</summary>
    public CommandResult Run(params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Folder,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "showsafety.dll"));
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, output, errors.Result);
    }

    public void Dispose() => _folder.Delete(recursive: true);
}

/// <summary>What a run gave.</summary>
public sealed record CommandResult(int ExitCode, string Output, string Errors);
