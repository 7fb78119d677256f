using System.ComponentModel;
using System.Diagnostics;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>Runs a circuit simulator of the operating system on a file.</summary>
internal static class Simulator
{
    /// <summary>Starts a program and returns what it printed.</summary>
    /// <exception cref="InvalidOperationException">The program is not installed, or it ran longer than two minutes.</exception>
    internal static string Run(string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        Array.ForEach(arguments, start.ArgumentList.Add);
        try
        {
            using Process process = Process.Start(start)!;
            process.StandardInput.Close();
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
            {
                process.Kill();
                throw new InvalidOperationException($"{program} did not end within two minutes");
            }

            return output + errors.Result;
        }
        catch (Win32Exception error)
        {
            throw new InvalidOperationException(
                $"{program} is needed for this test and was not found; install Debian's package {program}", error);
        }
    }
}
