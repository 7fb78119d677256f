using System.Text;
using WireCheck.Reports;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Cli;

/// <summary>Standard output and standard error: UTF-8, line feeds, colour only where someone sees it.</summary>
internal static class Terminal
{
    /// <summary>Narrowest and widest line; longer lines are hard to read.</summary>
    private const int Narrowest = 40;
    private const int Widest = 120;

    /// <summary>The layout of what is printed: the terminal's width and colour, or that of a pipe.</summary>
    internal static TextStyle Style()
    {
        if (Console.IsOutputRedirected)
        {
            return TextStyle.Piped;
        }

        bool plain = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            || Environment.GetEnvironmentVariable("TERM") == "dumb";
        int width = Console.WindowWidth;
        return new TextStyle(width <= 0 ? TextStyle.Piped.Width : Math.Clamp(width, Narrowest, Widest), !plain);
    }

    /// <summary>Writes bytes to standard output as they are.</summary>
    internal static void Write(ReadOnlySpan<byte> bytes)
    {
        using Stream output = Console.OpenStandardOutput();
        output.Write(bytes);
    }

    /// <summary>Writes words to standard output as UTF-8.</summary>
    internal static void Write(string words) => Write(Encoding.UTF8.GetBytes(words));

    /// <summary>Each problem on its line of standard error.</summary>
    internal static void Complain(IEnumerable<Problem> problems)
    {
        foreach (Problem problem in problems)
        {
            Complain(problem.ToString());
        }
    }

    /// <summary>One line on standard error; what could steer a terminal is escaped.</summary>
    internal static void Complain(string line)
    {
        using Stream error = Console.OpenStandardError();
        error.Write(Encoding.UTF8.GetBytes(PlainText.Escape(line) + "\n"));
    }
}
