using System.CommandLine;
using System.Globalization;

namespace WireCheck.Cli.Commands;

/// <summary>The day on which waivers are judged, as several commands take it.</summary>
internal static class TodayOption
{
    /// <summary>The option, which refuses what is no day.</summary>
    internal static Option<string?> Make()
    {
        Option<string?> option = new("--today")
        {
            Description = "Day on which waivers are judged, as year-month-day; the present day when left out.",
            HelpName = "DATE",
        };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } day && !TryDay(day, out _))
            {
                result.AddError($"'{day}' is no day; write it as year-month-day, such as 2027-06-01");
            }
        });
        return option;
    }

    /// <summary>The day that was written, or the present one.</summary>
    internal static DateOnly Of(string? words) => TryDay(words, out DateOnly day) ? day : DateOnly.FromDateTime(DateTime.Today);

    private static bool TryDay(string? words, out DateOnly day) =>
        DateOnly.TryParseExact(words, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
