using System.ComponentModel;
using System.Diagnostics;

namespace ShowSafety.Brief.Tests;

/// <summary>Runs an independent reader of PDF where the machine has one; the test is skipped where it has not.</summary>
internal static class ExternalTool
{
    public static (int ExitCode, string Output) RunOnPdf(string tool, byte[] pdf, params string[] arguments)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".pdf");
        File.WriteAllBytes(file, pdf);
        try
        {
            return Run(tool, [.. arguments.Select(argument => argument == "FILE" ? file : argument)]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static (int ExitCode, string Output) Run(string tool, string[] arguments)
    {
        var start = new ProcessStartInfo(tool, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            using Process process = Process.Start(start)!;
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, output + errors.GetAwaiter().GetResult());
        }
        catch (Win32Exception)
        {
            Assert.Skip($"{tool} is not installed on this machine");
            throw;
        }
    }
}
