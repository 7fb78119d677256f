namespace WireCheck.Circuit.Solving;

/// <summary>
/// Orders the unknowns of a symmetric system so that its factor stays sparse: approximate minimum degree on a
/// quotient graph (Amestoy, Davis and Duff, SIAM J. Matrix Anal. Appl. 17, 1996), with element absorption, mass
/// elimination and merging of indistinguishable unknowns.
/// </summary>
internal sealed class MinimumDegree
{
    private readonly int _n;
    private readonly int[] _start;
    private readonly int[] _elements;
    private readonly int[] _length;
    private readonly int[] _weight;
    private readonly int[] _degree;
    private readonly int[] _elementSize;
    private readonly bool[] _isElement;
    private readonly int[] _mark;
    private readonly long[] _outside;
    private readonly DegreeLists _lists;
    private readonly MergedUnknowns _merged;
    private int[] _space;
    private int _free;
    private int _stamp;
    private long _outsideStamp = 1;

    private MinimumDegree(int[] start, int[] adjacent)
    {
        _n = start.Length - 1;
        _space = new int[adjacent.Length + (adjacent.Length / 2) + (4 * _n) + 16];
        _start = new int[_n];
        _elements = new int[_n];
        _length = new int[_n];
        _weight = new int[_n];
        _degree = new int[_n];
        _elementSize = new int[_n];
        _isElement = new bool[_n];
        _mark = new int[_n];
        _outside = new long[_n];
        _lists = new DegreeLists(_n);
        _merged = new MergedUnknowns(_n);
        for (int i = 0; i < _n; i++)
        {
            // One place more than the neighbours: an unknown can gain an element before it loses a neighbour.
            _start[i] = _free;
            _length[i] = start[i + 1] - start[i];
            Array.Copy(adjacent, start[i], _space, _free, _length[i]);
            _free += _length[i] + 1;
            _weight[i] = 1;
            _degree[i] = _length[i];
        }
    }

    /// <summary>The order of elimination of a graph in compressed rows (both halves, no diagonal).</summary>
    internal static int[] Order(int[] start, int[] adjacent) => new MinimumDegree(start, adjacent).Run();

    private int[] Run()
    {
        for (int i = _n - 1; i >= 0; i--)
        {
            _lists.Add(i, _degree[i]);
        }

        List<int> pivots = [];
        int eliminated = 0;
        while (eliminated < _n)
        {
            int pivot = _lists.TakeSmallest();
            pivots.Add(pivot);
            eliminated += _weight[pivot];
            eliminated += Eliminate(pivot, _n - eliminated);
        }

        return _merged.Expand(pivots);
    }

    /// <summary>Turns a pivot into an element; returns the weight of unknowns eliminated along with it.</summary>
    private int Eliminate(int pivot, int remaining)
    {
        int size = GatherElement(pivot);
        int begin = _start[pivot];
        CountOutside(begin, begin + _length[pivot]);
        int massWeight = 0;
        int kept = begin;
        for (int place = begin; place < begin + _length[pivot]; place++)
        {
            int unknown = _space[place];
            if (Update(unknown, pivot, size, remaining))
            {
                massWeight += _weight[unknown];
                _weight[unknown] = 0;
                _merged.Join(pivot, unknown);
            }
            else
            {
                _space[kept++] = unknown;
            }
        }

        _length[pivot] = kept - begin;
        _elementSize[pivot] = size - massWeight;
        MergeTwins(begin, kept);
        FinishDegrees(pivot, remaining - massWeight, massWeight);
        _weight[pivot] = 0;
        return massWeight;
    }

    /// <summary>Collects the unknowns next to a pivot, directly or through elements, as the pivot's element.</summary>
    private int GatherElement(int pivot)
    {
        int stamp = ++_stamp;
        _mark[pivot] = stamp;
        int from = _start[pivot];
        int elements = _elements[pivot];
        int total = _length[pivot];
        Reserve(MaximumElement(pivot));
        int begin = _free;
        int size = 0;
        for (int i = 0; i < elements; i++)
        {
            int element = _space[from + i];
            size += Collect(_start[element], _length[element], stamp);
            _length[element] = 0;
            _isElement[element] = false;
        }

        size += Collect(from + elements, total - elements, stamp);
        _start[pivot] = begin;
        _length[pivot] = _free - begin;
        _elements[pivot] = 0;
        _isElement[pivot] = true;
        return size;
    }

    private int MaximumElement(int pivot)
    {
        int total = _length[pivot];
        for (int i = 0; i < _elements[pivot]; i++)
        {
            total += _length[_space[_start[pivot] + i]];
        }

        return total;
    }

    private int Collect(int from, int count, int stamp)
    {
        int size = 0;
        for (int place = from; place < from + count; place++)
        {
            int unknown = _space[place];
            if (_weight[unknown] > 0 && _mark[unknown] != stamp)
            {
                _mark[unknown] = stamp;
                _space[_free++] = unknown;
                size += _weight[unknown];
                _lists.Remove(unknown);
            }
        }

        return size;
    }

    /// <summary>For every element touching the new one: the weight of its unknowns that lie outside the new one.</summary>
    private void CountOutside(int begin, int end)
    {
        _outsideStamp += _n + 1L;
        for (int place = begin; place < end; place++)
        {
            int unknown = _space[place];
            int first = _start[unknown];
            for (int i = first; i < first + _elements[unknown]; i++)
            {
                int element = _space[i];
                if (_isElement[element])
                {
                    _outside[element] = (_outside[element] >= _outsideStamp
                        ? _outside[element]
                        : _outsideStamp + _elementSize[element]) - _weight[unknown];
                }
            }
        }
    }

    /// <summary>
    /// Rewrites an unknown's lists after a pivot and bounds its degree. True when nothing lies outside the new
    /// element, so that it can be eliminated with the pivot.
    /// </summary>
    private bool Update(int unknown, int pivot, int size, int remaining)
    {
        int first = _start[unknown];
        int write = first;
        long outside = 0;
        for (int i = first; i < first + _elements[unknown]; i++)
        {
            int element = _space[i];
            if (!_isElement[element])
            {
                continue;
            }

            long beyond = _outside[element] - _outsideStamp;
            if (beyond > 0)
            {
                outside += beyond;
                _space[write++] = element;
            }
            else
            {
                _isElement[element] = false;
                _length[element] = 0;
            }
        }

        int elements = write - first;
        int readFrom = first + _elements[unknown];
        int readTo = first + _length[unknown];
        // The new element goes in front of the plain neighbours: the first of them moves to the end.
        int neighbours = 0;
        int held = -1;
        for (int i = readFrom; i < readTo; i++)
        {
            int neighbour = _space[i];
            if (_weight[neighbour] > 0 && _mark[neighbour] != _stamp)
            {
                outside += _weight[neighbour];
                if (neighbours++ == 0)
                {
                    held = neighbour;
                }
                else
                {
                    _space[write + neighbours - 1] = neighbour;
                }
            }
        }

        _space[write] = pivot;
        if (neighbours > 0)
        {
            _space[write + neighbours] = held;
        }

        _elements[unknown] = elements + 1;
        _length[unknown] = elements + 1 + neighbours;
        if (outside == 0)
        {
            return true;
        }

        int within = size - _weight[unknown];
        _degree[unknown] = (int)Math.Min(Math.Min(remaining - _weight[unknown], (long)_degree[unknown] + within), outside + within);
        return false;
    }

    /// <summary>Merges unknowns with the same elements and neighbours: they have the same row in the factor.</summary>
    private void MergeTwins(int begin, int end)
    {
        _merged.ClearBuckets();
        for (int place = begin; place < end; place++)
        {
            int unknown = _space[place];
            long hash = 0;
            for (int i = _start[unknown]; i < _start[unknown] + _length[unknown]; i++)
            {
                hash += _space[i];
            }

            for (int twin = _merged.First(hash); twin >= 0; twin = _merged.Next(twin))
            {
                if (_weight[twin] > 0 && SameLists(twin, unknown))
                {
                    _weight[twin] += _weight[unknown];
                    _weight[unknown] = 0;
                    _merged.Join(twin, unknown);
                    break;
                }
            }

            if (_weight[unknown] > 0)
            {
                _merged.AddToBucket(hash, unknown);
            }
        }
    }

    private bool SameLists(int left, int right)
    {
        if (_length[left] != _length[right] || _elements[left] != _elements[right])
        {
            return false;
        }

        int stamp = ++_stamp;
        for (int i = _start[left]; i < _start[left] + _length[left]; i++)
        {
            _mark[_space[i]] = stamp;
        }

        for (int i = _start[right]; i < _start[right] + _length[right]; i++)
        {
            if (_mark[_space[i]] != stamp)
            {
                return false;
            }
        }

        return true;
    }

    private void FinishDegrees(int pivot, int remaining, int massWeight)
    {
        int begin = _start[pivot];
        int kept = begin;
        for (int place = begin; place < begin + _length[pivot]; place++)
        {
            int unknown = _space[place];
            if (_weight[unknown] > 0)
            {
                int degree = Math.Max(0, Math.Min(_degree[unknown] - massWeight, remaining - _weight[unknown]));
                _degree[unknown] = degree;
                _lists.Add(unknown, degree);
                _space[kept++] = unknown;
            }
        }

        _length[pivot] = kept - begin;
        _free = kept;
    }

    private void Reserve(int count)
    {
        if (_free + count > _space.Length)
        {
            Array.Resize(ref _space, (_space.Length * 2) + count);
        }
    }
}
