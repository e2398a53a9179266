package afterlength.start.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/**
 * The height of a carved surface over its plane, from the distance to its edge: arch of a plate, roundness of a peg. Kept on a
 * square grid and read between its points. Distances are those of a two-pass sweep with steps of 1 and √2, a few per cent off a
 * true distance, which no eye sees in a shading.
 */
final class Relief {
    private static final int BORDER = 3;

    private final double left_mm;
    private final double top_mm;
    private final double cell_mm;
    private final int columns;
    private final int rows;
    private final float[] distance_mm;
    private final float[] slopeX;
    private final float[] slopeY;

    /**
     * @param height height in mm at a place, from the distance to the edge in mm
     * @param smoothing how many times neighbouring heights are averaged
     */
    Relief(Shape shape, double cell_mm, Height height, int smoothing) {
        Rectangle2D box = shape.getBounds2D();
        this.cell_mm = cell_mm;
        this.left_mm = box.getX() - BORDER * cell_mm;
        this.top_mm = box.getY() - BORDER * cell_mm;
        this.columns = (int) (box.getWidth() / cell_mm) + 2 * BORDER + 1;
        this.rows = (int) (box.getHeight() / cell_mm) + 2 * BORDER + 1;
        this.distance_mm = distances(coverage(shape));
        float[] height_mm = heights(height);
        for (int i = 0; i < smoothing; i++) {
            height_mm = averaged(height_mm);
        }
        this.slopeX = slopes(height_mm, 1);
        this.slopeY = slopes(height_mm, columns);
    }

    /** The height of a carved surface at a place that lies so far from the edge. */
    @FunctionalInterface
    interface Height {
        double at(double x_mm, double y_mm, double distance_mm);
    }

    private float[] heights(Height height) {
        float[] height_mm = new float[columns * rows];
        for (int i = 0; i < height_mm.length; i++) {
            int row = i / columns;
            int column = i % columns;
            double x_mm = left_mm + (column + 0.5) * cell_mm;
            double y_mm = top_mm + (row + 0.5) * cell_mm;
            height_mm[i] = (float) height.at(x_mm, y_mm, distance_mm[i]);
        }
        return height_mm;
    }

    double distance_mm(double x_mm, double y_mm) {
        return read(distance_mm, x_mm, y_mm);
    }

    double slopeX(double x_mm, double y_mm) {
        return read(slopeX, x_mm, y_mm);
    }

    double slopeY(double x_mm, double y_mm) {
        return read(slopeY, x_mm, y_mm);
    }

    private byte[] coverage(Shape shape) {
        BufferedImage mask = new BufferedImage(columns, rows, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = mask.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.scale(1 / cell_mm, 1 / cell_mm);
        graphics.translate(-left_mm, -top_mm);
        graphics.setColor(Color.WHITE);
        graphics.fill(shape);
        graphics.dispose();
        return ((DataBufferByte) mask.getRaster().getDataBuffer()).getData();
    }

    private float[] distances(byte[] inside) {
        float[] distance = new float[inside.length];
        for (int i = 0; i < inside.length; i++) {
            int covered = inside[i] & 0xff;
            distance[i] = covered == 255 ? 1e6f : (float) (cell_mm * covered / 255);
        }
        float straight = (float) cell_mm;
        float diagonal = (float) (cell_mm * Math.sqrt(2));
        for (int i = columns + 1; i < distance.length; i++) {
            distance[i] = nearest(distance, i, -1, straight, diagonal);
        }
        for (int i = distance.length - columns - 2; i >= 0; i--) {
            distance[i] = nearest(distance, i, 1, straight, diagonal);
        }
        return distance;
    }

    private float nearest(float[] distance, int i, int sign, float straight, float diagonal) {
        float side = Math.min(distance[i + sign], distance[i + sign * columns]) + straight;
        float corner = Math.min(distance[i + sign * (columns - 1)], distance[i + sign * (columns + 1)]) + diagonal;
        return Math.min(distance[i], Math.min(side, corner));
    }

    private float[] averaged(float[] height) {
        float[] smooth = height.clone();
        for (int i = columns + 1; i < height.length - columns - 1; i++) {
            smooth[i] = (height[i] * 4 + height[i - 1] + height[i + 1] + height[i - columns] + height[i + columns]) / 8;
        }
        return smooth;
    }

    private float[] slopes(float[] height, int step) {
        float[] slope = new float[height.length];
        for (int i = step; i < height.length - step; i++) {
            slope[i] = (float) ((height[i + step] - height[i - step]) / (2 * cell_mm));
        }
        return slope;
    }

    private double read(float[] field, double x_mm, double y_mm) {
        double x = Math.min(Math.max((x_mm - left_mm) / cell_mm - 0.5, 0), columns - 1.001);
        double y = Math.min(Math.max((y_mm - top_mm) / cell_mm - 0.5, 0), rows - 1.001);
        int at = ((int) y) * columns + (int) x;
        double shareX = x - (int) x;
        double shareY = y - (int) y;
        int below = Math.min(at + columns, field.length - 2);
        double upper = field[at] + (field[at + 1] - field[at]) * shareX;
        double lower = field[below] + (field[below + 1] - field[below]) * shareX;
        return upper + (lower - upper) * shareY;
    }
}
