using WireCheck.Facts.Catalogue;
using WireCheck.Measured;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Makes a subject of each reading from the bench.</summary>
internal static class ReadingGatherer
{
    /// <summary>Suspects that are told after the first.</summary>
    private const int MostOthers = 3;

    internal static IEnumerable<FactSubject> Gather(GatherContext context)
    {
        if (context.Pack.Measured.Count == 0)
        {
            yield break;
        }

        foreach (ReadingBand band in context.Measured.Bands)
        {
            yield return Subject(band);
        }
    }

    private static FactSubject Subject(ReadingBand band)
    {
        string mode = band.Reading.Mode.Value;
        string where = band.Reading.Through is { } through
            ? $"through {through.Value}"
            : $"between {band.Reading.Between[0]} and {band.Reading.Between[1]}";
        FactSubject subject = new(ReadingFacts.Kind, $"{mode}: {where}", band.Reading.Position);
        subject.Set(ReadingFacts.Mode, mode);
        subject.Set(ReadingFacts.Where, where);
        subject.Set(ReadingFacts.AtRest, mode is Modes.Stored or Modes.LeftPlugged);
        bool volts = band.Reading.Through is null;
        subject.Set(volts ? ReadingFacts.Volts : ReadingFacts.Amps, band.Reads);
        subject.Set(volts ? ReadingFacts.VoltsLow : ReadingFacts.AmpsLow, Math.Max(0, band.Low));
        subject.Set(volts ? ReadingFacts.VoltsHigh : ReadingFacts.AmpsHigh, band.High);
        if (volts)
        {
            subject.Set(ReadingFacts.Reversed, band.Reversed);
            subject.Set(ReadingFacts.Missing, band.Missing);
            subject.SetNames(ReadingFacts.MayBeOpen, band.MayBeOpen);
        }
        else
        {
            subject.Set(ReadingFacts.Tapers, band.Tapers);
        }

        if (band.Suspects.Count > 0)
        {
            subject.Set(ReadingFacts.Suspect, band.Suspects[0].Where);
            subject.Set(ReadingFacts.SuspectExpected, band.Suspects[0].ExpectedOhms);
            subject.Set(ReadingFacts.SuspectNeeded, band.Suspects[0].NeededOhms);
        }

        subject.SetNames(ReadingFacts.OtherSuspects, band.Suspects.Skip(1).Take(MostOthers).Select(s => s.Where));
        if (band.Consumer is { } consumer)
        {
            subject.Set(ReadingFacts.Consumer, consumer.PartId);
            subject.Set(ReadingFacts.ConsumerAmps, consumer.Amps);
            subject.Set(ReadingFacts.ConsumerDraws, consumer.Draws);
            subject.Set(ReadingFacts.ConsumerPredicted, consumer.Predicted);
        }

        return subject;
    }
}
