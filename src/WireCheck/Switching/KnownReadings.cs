namespace WireCheck.Switching;

/// <summary>
/// Readings of contact states already solved, found by what conducts in them: the closed switches that could carry a current,
/// the relays pulled in, the converters that run. A relay chain goes through few such states however many switches there are,
/// since all that lies behind an open contact makes no difference. A table with open addressing.
/// </summary>
internal sealed class KnownReadings
{
    private const int FirstRoom = 256;

    private ulong[] _closed = new ulong[FirstRoom];
    private ulong[] _energised = new ulong[FirstRoom];
    private ulong[] _running = new ulong[FirstRoom];
    private StateReading?[] _readings = new StateReading?[FirstRoom];
    private int _count;

    internal void Clear()
    {
        Array.Clear(_readings);
        _count = 0;
    }

    /// <summary>The reading of a state; null when it has not been solved yet.</summary>
    internal StateReading? Find(ulong closed, ulong energised, ulong running) => _readings[Place(closed, energised, running)];

    internal void Keep(ulong closed, ulong energised, ulong running, StateReading reading)
    {
        if (2 * (_count + 1) > _readings.Length)
        {
            Grow();
        }

        int place = Place(closed, energised, running);
        _count += _readings[place] is null ? 1 : 0;
        (_closed[place], _energised[place], _running[place], _readings[place]) = (closed, energised, running, reading);
    }

    private int Place(ulong closed, ulong energised, ulong running)
    {
        // Odd multipliers near 2^64 over the golden ratio spread the few low bits over the whole word.
        ulong mixed = (closed * 0x9E3779B97F4A7C15) ^ (energised * 0xC2B2AE3D27D4EB4F) ^ (running * 0x165667B19E3779F9);
        int place = (int)((mixed ^ (mixed >> 32)) & (ulong)(_readings.Length - 1));
        while (_readings[place] is not null
            && (_closed[place] != closed || _energised[place] != energised || _running[place] != running))
        {
            place = (place + 1) & (_readings.Length - 1);
        }

        return place;
    }

    private void Grow()
    {
        (ulong[] closed, ulong[] energised, ulong[] running, StateReading?[] readings) = (_closed, _energised, _running, _readings);
        int room = 2 * readings.Length;
        (_closed, _energised, _running, _readings) = (new ulong[room], new ulong[room], new ulong[room], new StateReading?[room]);
        for (int i = 0; i < readings.Length; i++)
        {
            if (readings[i] is { } reading)
            {
                int place = Place(closed[i], energised[i], running[i]);
                (_closed[place], _energised[place], _running[place], _readings[place]) = (closed[i], energised[i], running[i], reading);
            }
        }
    }
}
