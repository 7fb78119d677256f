namespace WireCheck.Circuit.Solving;

/// <summary>Unknowns in lists by degree, so that one of the smallest degree is found at once.</summary>
internal sealed class DegreeLists
{
    private readonly int[] _head;
    private readonly int[] _next;
    private readonly int[] _previous;
    private readonly int[] _list;
    private int _smallest;

    internal DegreeLists(int n)
    {
        _head = new int[n + 1];
        _next = new int[n];
        _previous = new int[n];
        _list = new int[n];
        Array.Fill(_head, -1);
        Array.Fill(_list, -1);
    }

    internal void Add(int unknown, int degree)
    {
        int first = _head[degree];
        _next[unknown] = first;
        _previous[unknown] = -1;
        if (first >= 0)
        {
            _previous[first] = unknown;
        }

        _head[degree] = unknown;
        _list[unknown] = degree;
        _smallest = Math.Min(_smallest, degree);
    }

    internal void Remove(int unknown)
    {
        int degree = _list[unknown];
        if (degree < 0)
        {
            return;
        }

        (int previous, int next) = (_previous[unknown], _next[unknown]);
        if (previous >= 0)
        {
            _next[previous] = next;
        }
        else
        {
            _head[degree] = next;
        }

        if (next >= 0)
        {
            _previous[next] = previous;
        }

        _list[unknown] = -1;
    }

    internal int TakeSmallest()
    {
        while (_head[_smallest] < 0)
        {
            _smallest++;
        }

        int unknown = _head[_smallest];
        Remove(unknown);
        return unknown;
    }
}
